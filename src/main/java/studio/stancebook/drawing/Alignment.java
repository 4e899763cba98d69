package studio.stancebook.drawing;

import studio.stancebook.dimension.Landmark;

/** The point at which ghosts are laid over a drawing; the ground always stays the ground. */
public enum Alignment {
    FRONT_WHEEL,
    REAR_WHEEL,
    COWL,
    H_POINT;

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
