package studio.stancebook.measure;

import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;

/** One side view, prepared so that every measure is computed from the same readings. Not shared between threads. */
public final class Subject {

    private final DimensionSet set;
    private final Readings readings;
    private @Nullable Underside underbody;

    public Subject(DimensionSet set) {
        this.set = set;
        this.readings = new Readings(set);
    }

    public DimensionSet set() {
        return set;
    }

    public Readings readings() {
        return readings;
    }

    Estimate get(Reading reading) {
        return readings.get(reading);
    }

    /** True when both landmarks are recorded. */
    boolean drawn(Landmark first, Landmark second) {
        return set.landmarks().containsKey(first) && set.landmarks().containsKey(second);
    }

    /** True when a tyre is given by a flotation size. */
    boolean nominalTyres() {
        for (Axle axle : Axle.values()) {
            if (set.tyre(axle).filter(t -> t.notation().equals("flotation")).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** The underbody on its tyres; only where {@link Underside#recorded} says so. */
    Underside underbody() {
        Underside known = underbody;
        if (known == null) {
            known = Underside.of(set, readings);
            underbody = known;
        }
        return known;
    }
}
