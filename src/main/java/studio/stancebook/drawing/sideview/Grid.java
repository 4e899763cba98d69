package studio.stancebook.drawing.sideview;

/** The grid behind a drawing: every 100 mm with each fifth line stronger, or quarter wheels where there is no scale. */
final class Grid {

    private static final double STEP_MM = 100;

    private Grid() {}

    static void draw(Vehicle vehicle, Extent extent, DrawingBuilder drawing) {
        Double wheel = vehicle.wheelDiameter();
        if (vehicle.unscaled() && wheel == null) {
            return;
        }
        if (vehicle.unscaled() && wheel != null) {
            ofWheels(wheel, extent, drawing);
        } else {
            ofMillimetres(extent, drawing);
        }
    }

    static void ofMillimetres(Extent extent, DrawingBuilder drawing) {
        draw(STEP_MM, 5, extent, drawing);
    }

    static void ofWheels(double wheelMm, Extent extent, DrawingBuilder drawing) {
        draw(wheelMm / 4, 4, extent, drawing);
    }

    private static void draw(double step, int strong, Extent extent, DrawingBuilder drawing) {
        PathBuilder fine = new PathBuilder();
        PathBuilder five = new PathBuilder();
        for (int i = first(extent.left(), step); i * step <= extent.right(); i++) {
            (i % strong == 0 ? five : fine).moveTo(i * step, extent.top()).upTo(extent.bottom());
        }
        for (int i = first(extent.bottom(), step); i * step <= extent.top(); i++) {
            (i % strong == 0 ? five : fine).moveTo(extent.left(), i * step).acrossTo(extent.right());
        }
        drawing.stroke(LayerId.GRID, "grid", fine);
        drawing.stroke(LayerId.GRID, "grid-five", five);
    }

    private static int first(double from, double step) {
        return (int) Math.ceil(from / step);
    }
}
