package studio.stancebook.drawing.sideview;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;

/** The point at which ghosts are laid over a drawing; the ground always stays the ground. */
public enum Alignment {
    FRONT_WHEEL,
    REAR_WHEEL,
    COWL,
    H_POINT;

    /** Its name in addresses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The alignment of a name. */
    public static Optional<Alignment> of(String key) {
        return Arrays.stream(values()).filter(one -> one.key().equals(key)).findFirst();
    }

    /** Whether a dimension set has the point; the wheels are always there. */
    public boolean isIn(DimensionSet dimensions) {
        return switch (this) {
            case FRONT_WHEEL, REAR_WHEEL -> true;
            case COWL -> dimensions.landmark(Landmark.COWL).isPresent();
            case H_POINT -> dimensions.landmark(Landmark.H_POINT).isPresent();
        };
    }

    /** The x that is laid over; where the landmark is not recorded, the front wheel. */
    double xOf(Vehicle vehicle) {
        return switch (this) {
            case FRONT_WHEEL -> 0;
            case REAR_WHEEL -> vehicle.wheelbase();
            case COWL -> vehicle.landmark(Landmark.COWL).map(p -> p.x()).orElse(0.0);
            case H_POINT -> vehicle.landmark(Landmark.H_POINT).map(p -> p.x()).orElse(0.0);
        };
    }
}
