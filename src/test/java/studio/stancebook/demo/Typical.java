package studio.stancebook.demo;

import studio.stancebook.dimension.DimensionSet;

/** The sets that the proposals of the demo studio are made from, for tests of other modules. */
public final class Typical {

    private Typical() {}

    public static DimensionSet of(String segment) {
        return InventedCatalogue.typical(segment);
    }
}
