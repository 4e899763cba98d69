package studio.stancebook.drawing;

/** The grid behind a drawing: every 100 mm with each fifth line stronger, or quarter wheels where there is no scale. */
final class Grid {

    private static final double STEP_MM = 100;

    private Grid() {}

    static void draw(Vehicle vehicle, Extent extent, Film film) {
        Double wheel = vehicle.wheelDiameter();
        if (vehicle.unscaled() && wheel == null) {
            return;
        }
        if (vehicle.unscaled() && wheel != null) {
            ofWheels(wheel, extent, film);
        } else {
            ofMillimetres(extent, film);
        }
    }

    static void ofMillimetres(Extent extent, Film film) {
        draw(STEP_MM, 5, extent, film);
    }

    static void ofWheels(double wheelMm, Extent extent, Film film) {
        draw(wheelMm / 4, 4, extent, film);
    }

    private static void draw(double step, int strong, Extent extent, Film film) {
        PathBuilder fine = new PathBuilder();
        PathBuilder five = new PathBuilder();
        for (int i = first(extent.left(), step); i * step <= extent.right(); i++) {
            (i % strong == 0 ? five : fine).moveTo(i * step, extent.top()).upTo(extent.bottom());
        }
        for (int i = first(extent.bottom(), step); i * step <= extent.top(); i++) {
            (i % strong == 0 ? five : fine).moveTo(extent.left(), i * step).acrossTo(extent.right());
        }
        film.stroke(Film.Leaf.GRID, "grid", fine);
        film.stroke(Film.Leaf.GRID, "grid-five", five);
    }

    private static int first(double from, double step) {
        return (int) Math.ceil(from / step);
    }
}
