package studio.stancebook.proposal;

import java.util.List;

/**
 * Proposals as the board looks at them.
 *
 * @param open those that are a draft or for review, the most outside their bands first
 * @param changed whatever their stage, the last changed first
 */
public record NotableProposals(List<ProposalSummary> open, List<ProposalSummary> changed) {

    public NotableProposals {
        open = List.copyOf(open);
        changed = List.copyOf(changed);
    }
}
