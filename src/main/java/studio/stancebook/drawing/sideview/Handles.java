package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Reading;
import studio.stancebook.geometry.Point;

/**
 * The points of a side view by which its dimensions can be pulled.
 *
 * @param factor how many mm of the drawing a mm (or unit of a sketch) is
 * @param all of them, those of landmarks last
 */
public record Handles(double factor, List<Handle> all) {

    /**
     * One of them.
     *
     * @param key JSON name of a dimension or a landmark
     * @param axes in which it can be pulled: {@code x}, {@code z} or {@code xz}
     * @param x where it stands on the drawing, mm behind the front wheel centre
     * @param z where it stands on the drawing, mm above the ground
     * @param origin the place along its axis at which its dimension is 0, in mm of the drawing
     * @param sense -1 where the dimension grows to the front
     */
    public record Handle(String key, String label, String axes, double x, double z, double origin, int sense) {}

    public Handles {
        all = List.copyOf(all);
    }

    public static Handles none() {
        return new Handles(1, List.of());
    }

    /** Those of everything that is recorded, or derived from what is. */
    public static Handles of(DimensionSet set) {
        Vehicle vehicle = Vehicle.of(set);
        double factor = vehicle.wheelbase() / set.scalar(Dimension.WHEELBASE).orElseThrow();
        return new Handles(factor, new Finder(vehicle).all());
    }

    private static final class Finder {

        private final Vehicle vehicle;
        private final List<Handle> found = new ArrayList<>();

        Finder(Vehicle vehicle) {
            this.vehicle = vehicle;
        }

        List<Handle> all() {
            double wheelbase = vehicle.wheelbase();
            double hub = vehicle.nominalDiameter() / 2;
            add(Dimension.WHEELBASE, "x", wheelbase, hub, 0, 1);
            find(Reading.FRONT_OVERHANG).ifPresent(front -> add(Dimension.FRONT_OVERHANG, "x", -front, hub, 0, -1));
            find(Reading.REAR_OVERHANG)
                    .ifPresent(rear -> add(Dimension.REAR_OVERHANG, "x", wheelbase + rear, hub, wheelbase, 1));
            if (vehicle.landmark(Landmark.ROOF_APEX).isEmpty()) {
                find(Reading.OVERALL_HEIGHT)
                        .ifPresent(top -> add(Dimension.OVERALL_HEIGHT, "z", wheelbase / 2, top, 0, 1));
            }
            find(Reading.GROUND_CLEARANCE)
                    .ifPresent(low -> add(Dimension.GROUND_CLEARANCE, "z", 0.66 * wheelbase, low, 0, 1));
            find(Reading.ROCKER_HEIGHT)
                    .filter(height -> vehicle.landmark(Landmark.ROCKER_FRONT).isEmpty())
                    .ifPresent(height -> add(Dimension.ROCKER_HEIGHT, "z", wheelbase / 2, height, 0, 1));
            for (Landmark landmark : Landmark.values()) {
                vehicle.landmark(landmark).ifPresent(at -> add(landmark, at));
            }
            return found;
        }

        private Optional<Double> find(Reading reading) {
            return Optional.ofNullable(vehicle.find(reading));
        }

        private void add(Dimension dimension, String axis, double x, double z, double origin, int sense) {
            found.add(new Handle(dimension.key(), dimension.label(), axis, x, z, origin, sense));
        }

        private void add(Landmark landmark, Point at) {
            found.add(new Handle(landmark.key(), landmark.label(), "xz", at.x(), at.z(), 0, 1));
        }
    }
}
