package studio.stancebook.proposal;

import studio.stancebook.problem.NotFound;

/** There is no proposal of this id, or none that the person may see; the two are not told apart. */
public final class UnknownProposal extends NotFound {

    public UnknownProposal(long id) {
        super("proposal", id);
    }
}
