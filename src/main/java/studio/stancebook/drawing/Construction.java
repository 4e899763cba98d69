package studio.stancebook.drawing;

import studio.stancebook.dimension.Reading;
import studio.stancebook.geometry.Point;

/** Straight lines where there is no body to draw: the nose, the tail and the roof as far as they are known. */
final class Construction {

    private Construction() {}

    static void draw(Vehicle vehicle, Film film, Marking marking) {
        Double height = vehicle.find(Reading.OVERALL_HEIGHT);
        Double front = vehicle.find(Reading.FRONT_OVERHANG);
        Double rear = vehicle.find(Reading.REAR_OVERHANG);
        double top = height == null ? 1.4 * vehicle.nominalDiameter() : height;
        double end = vehicle.wheelbase();
        if (front != null) {
            upright(film, marking.pen("construction", Part.FRONT_OVERHANG), -front, top);
        }
        if (rear != null) {
            upright(film, marking.pen("construction", Part.REAR_OVERHANG), end + rear, top);
        }
        if (height != null) {
            double from = front == null ? -vehicle.nominalDiameter() / 2 : -front;
            double to = end + (rear == null ? vehicle.nominalDiameter() / 2 : rear);
            film.line(
                    Film.Leaf.BODY,
                    marking.pen("construction", Part.HEIGHT),
                    new Point(from, height),
                    new Point(to, height));
        }
        upright(film, "construction", 0, top * 0.66);
        upright(film, "construction", end, top * 0.66);
    }

    private static void upright(Film film, String pen, double x, double top) {
        film.line(Film.Leaf.BODY, pen, new Point(x, 0), new Point(x, top));
    }
}
