package studio.stancebook.proposal.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.proposal.ProposalSummary;

/**
 * A proposal in the list of all.
 *
 * @param segment name of the segment
 * @param stage key of the stage
 * @param changed when it was changed last, to the minute in UTC
 * @param picture null where it was revised while the list was read
 */
record ProposalLine(
        long id,
        String name,
        String segment,
        String stage,
        String owner,
        int revision,
        int judged,
        int outside,
        int tooClose,
        boolean unscaled,
        String changed,
        @Nullable CachedFragment picture) {

    static ProposalLine of(ProposalSummary proposal, @Nullable CachedFragment picture) {
        return new ProposalLine(
                proposal.id(),
                proposal.name(),
                proposal.segment().name(),
                proposal.stage().key(),
                proposal.ownerName(),
                proposal.revision(),
                proposal.judged(),
                proposal.outside(),
                proposal.tooClose(),
                proposal.unscaled(),
                Amounts.time(proposal.changedAt()),
                picture);
    }
}
