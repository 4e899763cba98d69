package studio.stancebook.proposal;

import studio.stancebook.dimension.DimensionSet;

/**
 * A new proposal as somebody wants it.
 *
 * @param name 1 to 200 characters on one line; blanks around it are dropped
 * @param segment the key of the segment to be judged in
 * @param dimensions of the first revision
 * @param note to the first revision; may be empty
 */
public record ProposalDraft(String name, String segment, DimensionSet dimensions, String note) {

    public ProposalDraft {
        name = name.strip();
        note = note.strip();
    }
}
