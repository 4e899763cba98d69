package studio.stancebook.measure;

import java.util.OptionalDouble;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.geometry.DegenerateShape;
import studio.stancebook.geometry.OffRoadDimensions;
import studio.stancebook.geometry.Point;

/** What a dimension set says about off-road criteria: angles as the measures have them, clearances as recorded. */
public final class OffRoadReading {

    private final DimensionSet set;
    private final Subject subject;

    private OffRoadReading(DimensionSet set) {
        this.set = set;
        this.subject = new Subject(set);
    }

    /**
     * Running clearance is the recorded ground clearance (H156), else the lowest point of the underbody. Clearance between
     * the axles is that of the underbody where it is recorded, else the ground clearance, which it cannot fall below. A
     * sketch without dimensions has angles only.
     */
    public static OffRoadDimensions of(DimensionSet set) {
        OffRoadReading reading = new OffRoadReading(set);
        return new OffRoadDimensions(
                reading.angle("approach-angle"),
                reading.angle("departure-angle"),
                reading.angle("ramp-angle"),
                reading.running(),
                reading.length(Dimension.FRONT_AXLE_CLEARANCE),
                reading.length(Dimension.REAR_AXLE_CLEARANCE),
                reading.betweenAxles());
    }

    private OptionalDouble angle(String measure) {
        MeasureValue value = MeasureRegistry.builtIn().get(measure).of(subject);
        if (value instanceof Measured measured) {
            return OptionalDouble.of(measured.value());
        }
        boolean unlimited = value instanceof NotMeasurable missing && missing.why() == NotMeasurable.Why.NOT_LIMITED;
        return unlimited ? OptionalDouble.of(Double.POSITIVE_INFINITY) : OptionalDouble.empty();
    }

    private OptionalDouble length(Dimension dimension) {
        return set.scale() == Scale.UNSCALED ? OptionalDouble.empty() : set.scalar(dimension);
    }

    private OptionalDouble running() {
        OptionalDouble recorded = length(Dimension.GROUND_CLEARANCE);
        if (recorded.isPresent() || set.scale() == Scale.UNSCALED) {
            return recorded;
        }
        return set.points(Polyline.UNDERBODY).stream()
                .mapToDouble(Point::z)
                .filter(height -> height >= 0)
                .min();
    }

    private OptionalDouble betweenAxles() {
        if (set.scale() == Scale.UNSCALED) {
            return OptionalDouble.empty();
        }
        OptionalDouble drawn = underbody();
        return drawn.isPresent() ? drawn : length(Dimension.GROUND_CLEARANCE);
    }

    private OptionalDouble underbody() {
        if (!Underside.recorded(subject)) {
            return OptionalDouble.empty();
        }
        try {
            return subject.underbody().clearanceMm();
        } catch (DegenerateShape tyresOverlap) {
            return OptionalDouble.empty();
        }
    }
}
