package studio.stancebook.catalogue.internal;

import studio.stancebook.account.Deed;
import studio.stancebook.account.Facts;
import studio.stancebook.dimension.DimensionJson;

/** What is told of packages that somebody did something to. */
final class PackageDeeds {

    private PackageDeeds() {}

    static Deed of(String action, StoredPackage one, Facts before, Facts after) {
        String title = one.modelYear() == null ? one.name() : one.name() + " (" + one.modelYear() + ")";
        return Deed.of(action, "package", one.id(), title, before, after);
    }

    /** All that is recorded. */
    static Facts facts(StoredPackage one) {
        return Facts.of("name", one.name())
                .and("segment", one.segment().key())
                .and("modelYear", one.modelYear())
                .and("origin", one.origin().key())
                .and(DimensionJson.flat(one.dimensions()));
    }
}
