package studio.stancebook.proposal.web;

import studio.stancebook.proposal.RevisionSummary;

/**
 * A revision in the list on its proposal's page.
 *
 * @param at when it was made, to the minute in UTC
 * @param shown whether it is the one on the page
 */
record RevisionLine(
        int number, String note, String author, String at, int judged, int outside, int tooClose, boolean shown) {

    static RevisionLine of(RevisionSummary revision, int shown) {
        return new RevisionLine(
                revision.number(),
                revision.note(),
                revision.author(),
                Amounts.time(revision.at()),
                revision.judged(),
                revision.outside(),
                revision.tooClose(),
                revision.number() == shown);
    }
}
