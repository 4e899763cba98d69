package studio.stancebook.proposal;

import studio.stancebook.problem.NotFound;

/** The proposal has no revision of this number. */
public final class UnknownRevision extends NotFound {

    public UnknownRevision(int number) {
        super("revision", number);
    }
}
