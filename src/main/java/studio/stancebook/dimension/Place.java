package studio.stancebook.dimension;

import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;

/** A landmark with the sensitivities of its coordinates. */
record Place(Estimate x, Estimate z) {

    /** The place of a landmark; null when it is not recorded. */
    static @Nullable Place of(DimensionSet set, Landmark landmark) {
        Point point = set.landmarks().get(landmark);
        return point == null
                ? null
                : new Place(Estimate.of(Variable.x(landmark), point.x()), Estimate.of(Variable.z(landmark), point.z()));
    }

    /** The height at {@code x} of the straight line through this place and {@code other}, whose x must differ. */
    Estimate heightAt(Estimate at, Place other) {
        Estimate slope = other.z.minus(z).over(other.x.minus(x));
        return z.plus(slope.times(at.minus(x)));
    }

    boolean sameAs(Place other) {
        return x.value() == other.x.value() && z.value() == other.z.value();
    }
}
