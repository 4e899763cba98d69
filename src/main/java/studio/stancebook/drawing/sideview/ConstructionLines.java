package studio.stancebook.drawing.sideview;

import studio.stancebook.dimension.Reading;
import studio.stancebook.geometry.Point;

/** Straight lines where there is no body to draw: the nose, the tail and the roof as far as they are known. */
final class ConstructionLines {

    private ConstructionLines() {}

    static void draw(Vehicle vehicle, DrawingBuilder drawing, Marking marking) {
        Double height = vehicle.find(Reading.OVERALL_HEIGHT);
        Double front = vehicle.find(Reading.FRONT_OVERHANG);
        Double rear = vehicle.find(Reading.REAR_OVERHANG);
        double top = height == null ? 1.4 * vehicle.nominalDiameter() : height;
        double end = vehicle.wheelbase();
        if (front != null) {
            upright(drawing, marking.pen("construction", Part.FRONT_OVERHANG), -front, top);
        }
        if (rear != null) {
            upright(drawing, marking.pen("construction", Part.REAR_OVERHANG), end + rear, top);
        }
        if (height != null) {
            double from = front == null ? -vehicle.nominalDiameter() / 2 : -front;
            double to = end + (rear == null ? vehicle.nominalDiameter() / 2 : rear);
            drawing.line(
                    LayerId.BODY,
                    marking.pen("construction", Part.HEIGHT),
                    new Point(from, height),
                    new Point(to, height));
        }
        upright(drawing, "construction", 0, top * 0.66);
        upright(drawing, "construction", end, top * 0.66);
    }

    private static void upright(DrawingBuilder drawing, String pen, double x, double top) {
        drawing.line(LayerId.BODY, pen, new Point(x, 0), new Point(x, top));
    }
}
