package studio.stancebook.catalogue;

import studio.stancebook.problem.NotFound;

/** There is no benchmark package of this id. */
public final class UnknownPackage extends NotFound {

    public UnknownPackage(long id) {
        super("benchmark package", id);
    }
}
