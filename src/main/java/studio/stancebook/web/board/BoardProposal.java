package studio.stancebook.web.board;

import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.Stage;

/**
 * A proposal on the board.
 *
 * @param outside how many measures are outside their band
 * @param tooClose how many are too close to call
 */
record BoardProposal(
        long id,
        String name,
        String segment,
        String owner,
        int revision,
        boolean forReview,
        int outside,
        int tooClose) {

    static BoardProposal of(ProposalSummary proposal) {
        return new BoardProposal(
                proposal.id(),
                proposal.name(),
                proposal.segment().name(),
                proposal.ownerName(),
                proposal.revision(),
                proposal.stage() == Stage.FOR_REVIEW,
                proposal.outside(),
                proposal.tooClose());
    }
}
