package studio.stancebook.web.board;

import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.WorstFinding;

/**
 * A proposal on the board.
 *
 * @param stage key of its stage
 * @param outside how many measures are outside their band
 * @param tooClose how many are too close to call
 * @param worst the one furthest outside; null where none is
 * @param picture its side view; null where it was revised while the board was made
 */
record BoardProposal(
        long id,
        String name,
        String segment,
        String owner,
        int revision,
        String stage,
        int outside,
        int tooClose,
        @Nullable WorstFinding worst,
        @Nullable CachedFragment picture) {

    static BoardProposal of(ProposalSummary proposal, @Nullable WorstFinding worst, @Nullable CachedFragment picture) {
        return new BoardProposal(
                proposal.id(),
                proposal.name(),
                proposal.segment().name(),
                proposal.ownerName(),
                proposal.revision(),
                proposal.stage().key(),
                proposal.outside(),
                proposal.tooClose(),
                worst,
                picture);
    }
}
