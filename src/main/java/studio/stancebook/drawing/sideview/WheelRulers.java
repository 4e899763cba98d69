package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.geometry.Point;

/**
 * The two rulers in wheels: circles of the reference diameter stepped along the ground from the front tyre to the rear
 * one, both wheels counted, and circles stacked up to the overall height.
 */
final class WheelRulers {

    private final double diameter;
    private final DrawingBuilder drawing;

    WheelRulers(double diameterMm, DrawingBuilder drawing) {
        this.diameter = diameterMm;
        this.drawing = drawing;
    }

    /** The x of the centre of each whole circle that begins before the rear wheel centre; the first is the front tyre. */
    static List<Double> steps(double wheelbaseMm, double diameterMm) {
        List<Double> centres = new ArrayList<>();
        for (double x = 0; x < wheelbaseMm - 0.02 * diameterMm && centres.size() < 40; x += diameterMm) {
            centres.add(x);
        }
        return centres;
    }

    /** Draws the ghost circles between the tyres. */
    void along(double wheelbaseMm) {
        List<Double> centres = steps(wheelbaseMm, diameter);
        for (double x : centres.subList(1, centres.size())) {
            drawing.disc(LayerId.RULER, "ghost-wheel", new Point(x, diameter / 2), diameter / 2);
        }
    }

    /** Stacks circles at {@code x} up to {@code heightMm}, the last one cut off there. */
    void upwards(double x, double heightMm) {
        int whole = (int) Math.min(20, Math.floor(heightMm / diameter + 1e-9));
        for (int i = 0; i < whole; i++) {
            drawing.disc(LayerId.RULER, "ghost-wheel", new Point(x, (i + 0.5) * diameter), diameter / 2);
        }
        double rest = heightMm - whole * diameter;
        if (rest > 0.02 * diameter) {
            drawing.stroke(LayerId.RULER, "ghost-wheel", cutOff(x, whole * diameter, rest));
        }
    }

    /** The lower part of a circle that stands on {@code foot}, {@code rise} high. */
    private PathBuilder cutOff(double x, double foot, double rise) {
        double radius = diameter / 2;
        double half = Math.sqrt(Math.max(0, radius * radius - (radius - rise) * (radius - rise)));
        return new PathBuilder()
                .moveTo(x - half, foot + rise)
                .arcTo(radius, rise > radius, false, new Point(x + half, foot + rise));
    }
}
