package studio.stancebook.proposal.web;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import studio.stancebook.band.VerdictLine;
import studio.stancebook.band.VerdictLines;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.Scale;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.RevisionSummary;
import studio.stancebook.proposal.RevisionView;

/** Proposals as they are sent. */
final class ProposalAnswers {

    private ProposalAnswers() {}

    /** Who a proposal belongs to. */
    record Owner(long id, String name) {}

    /** A proposal in a list; the counts are of its newest revision. */
    record Entry(
            long id,
            String name,
            String segment,
            String stage,
            Owner owner,
            int revision,
            int judged,
            int outside,
            int tooClose,
            String scale,
            Instant changedAt,
            String changedBy) {

        static Entry of(ProposalSummary proposal) {
            return new Entry(
                    proposal.id(),
                    proposal.name(),
                    proposal.segment().key(),
                    proposal.stage().key(),
                    new Owner(proposal.ownerId(), proposal.ownerName()),
                    proposal.revision(),
                    proposal.judged(),
                    proposal.outside(),
                    proposal.tooClose(),
                    (proposal.unscaled() ? Scale.UNSCALED : Scale.MILLIMETRES).key(),
                    proposal.changedAt(),
                    proposal.changedBy());
        }
    }

    /** A proposal with its newest revision. */
    record Whole(
            long id,
            String name,
            String segment,
            String stage,
            Owner owner,
            long version,
            int revision,
            Map<String, Object> dimensions,
            String scale,
            String note,
            int judged,
            int outside,
            int tooClose,
            Instant createdAt,
            Instant changedAt,
            String changedBy) {

        static Whole of(ProposalView proposal) {
            RevisionView newest = proposal.newest();
            return new Whole(
                    proposal.id(),
                    proposal.name(),
                    proposal.segment().key(),
                    proposal.stage().key(),
                    new Owner(proposal.ownerId(), proposal.ownerName()),
                    proposal.version(),
                    newest.number(),
                    DimensionJson.write(newest.dimensions()),
                    newest.dimensions().scale().key(),
                    newest.note(),
                    newest.assessment().judged(),
                    newest.assessment().outside(),
                    newest.assessment().tooClose(),
                    proposal.createdAt(),
                    proposal.changedAt(),
                    proposal.changedBy());
        }
    }

    /** A revision in a list. */
    record RevisionEntry(int revision, String note, String author, Instant at, int judged, int outside, int tooClose) {

        static RevisionEntry of(RevisionSummary revision) {
            return new RevisionEntry(
                    revision.number(),
                    revision.note(),
                    revision.author(),
                    revision.at(),
                    revision.judged(),
                    revision.outside(),
                    revision.tooClose());
        }
    }

    /** A revision. */
    record Revision(
            int revision,
            String segment,
            Map<String, Object> dimensions,
            String scale,
            String note,
            String author,
            Instant at,
            long classRevision) {

        static Revision of(RevisionView revision) {
            return new Revision(
                    revision.number(),
                    revision.segment().key(),
                    DimensionJson.write(revision.dimensions()),
                    revision.dimensions().scale().key(),
                    revision.note(),
                    revision.author(),
                    revision.at(),
                    revision.classRevision());
        }
    }

    /**
     * The assessment that was made of a revision.
     *
     * @param revision the number of the revision of the proposal
     * @param classRevision the revision of the class that the bands stood against
     * @param scale millimetres or unscaled
     */
    record Assessed(
            String segment,
            int revision,
            long classRevision,
            Instant at,
            String scale,
            int judged,
            int outside,
            int tooClose,
            List<VerdictLine> verdicts) {

        static Assessed of(RevisionView revision) {
            return new Assessed(
                    revision.segment().key(),
                    revision.number(),
                    revision.classRevision(),
                    revision.at(),
                    revision.dimensions().scale().key(),
                    revision.assessment().judged(),
                    revision.assessment().outside(),
                    revision.assessment().tooClose(),
                    VerdictLines.of(revision.assessment(), revision.moves()));
        }
    }
}
