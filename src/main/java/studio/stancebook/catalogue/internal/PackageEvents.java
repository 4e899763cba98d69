package studio.stancebook.catalogue.internal;

import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.dimension.DimensionJson;

/** What is told of packages that somebody did something to. */
final class PackageEvents {

    private PackageEvents() {}

    static ActivityEvent of(String action, StoredPackage one, FieldValues before, FieldValues after) {
        String title = one.modelYear() == null ? one.name() : one.name() + " (" + one.modelYear() + ")";
        return ActivityEvent.of(action, "package", one.id(), title, before, after);
    }

    /** All that is recorded. */
    static FieldValues facts(StoredPackage one) {
        return FieldValues.of("name", one.name())
                .and("segment", one.segment().key())
                .and("modelYear", one.modelYear())
                .and("origin", one.origin().key())
                .and(DimensionJson.flat(one.dimensions()));
    }
}
