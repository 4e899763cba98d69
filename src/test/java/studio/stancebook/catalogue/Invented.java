package studio.stancebook.catalogue;

import java.util.concurrent.atomic.AtomicInteger;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Origin;

/** Invented packages for tests. */
public final class Invented {

    private static final AtomicInteger MADE = new AtomicInteger();

    private Invented() {}

    /** A key that no other test has. */
    public static String key(String about) {
        return about + "-" + MADE.incrementAndGet();
    }

    /** A name that no other test has. */
    public static String name(String about) {
        return about + " " + MADE.incrementAndGet();
    }

    /** Wheelbase, tyres and height: enough for some measures. */
    public static DimensionSetBuilder dimensions(double wheelbase) {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Dimension.OVERALL_HEIGHT, 1500)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700);
    }

    /** A package of a segment. */
    public static PackageDraft draft(String segment, String name, double wheelbase) {
        return new PackageDraft(
                name, segment, 2020, Origin.SPECIFICATION, dimensions(wheelbase).build());
    }
}
