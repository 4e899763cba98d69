package studio.stancebook.catalogue;

import studio.stancebook.problem.Conflict;

/** The segment has a package of this name and model year. */
public final class DuplicatePackage extends Conflict {

    public DuplicatePackage(PackageName name) {
        super("The segment " + name.segment() + " has a package " + name.name()
                + (name.modelYear() == null ? " without a model year" : " of " + name.modelYear()) + " already.");
    }
}
