package studio.stancebook.drawing.sideview;

import studio.stancebook.dimension.Axle;
import studio.stancebook.geometry.Point;

/** Tyres with rim, sidewall and contact. */
final class Wheels {

    private static final int SPOKES = 5;

    private final Vehicle vehicle;
    private final DrawingBuilder drawing;
    private final Marking marking;

    Wheels(Vehicle vehicle, DrawingBuilder drawing, Marking marking) {
        this.vehicle = vehicle;
        this.drawing = drawing;
        this.marking = marking;
    }

    void draw(boolean spoked) {
        for (Axle axle : Axle.values()) {
            vehicle.tyre(axle).ifPresent(tyre -> wheel(tyre, spoked));
        }
    }

    private void wheel(DrawnTyre tyre, boolean spoked) {
        String pen = marking.pen("tyre", Part.TYRES);
        if (tyre.halfContact() > 0) {
            drawing.stroke(LayerId.WHEELS, pen, flattened(tyre));
        } else {
            drawing.disc(LayerId.WHEELS, pen, tyre.centre(), tyre.radius());
        }
        Double rim = tyre.rimRadius();
        if (rim != null) {
            drawing.disc(LayerId.WHEELS, marking.pen("rim", Part.TYRES), tyre.centre(), rim);
        }
        if (spoked && rim != null) {
            drawing.disc(LayerId.WHEELS, "hub", tyre.centre(), 0.16 * rim);
            drawing.stroke(LayerId.WHEELS, "hub", spokes(tyre, rim));
        }
    }

    /** A loaded tyre: its free circle cut off by the ground. */
    private PathBuilder flattened(DrawnTyre tyre) {
        double half = tyre.halfContact();
        return new PathBuilder()
                .moveTo(tyre.x() - half, 0)
                .arcTo(tyre.radius(), true, true, new Point(tyre.x() + half, 0))
                .close();
    }

    private PathBuilder spokes(DrawnTyre tyre, double rim) {
        PathBuilder path = new PathBuilder();
        for (int i = 0; i < SPOKES; i++) {
            double angle = 90 + 360.0 * i / SPOKES;
            for (int side = -1; side <= 1; side += 2) {
                path.moveTo(Vector.atDeg(angle + side * 38).times(0.16 * rim).from(tyre.centre()));
                path.lineTo(Vector.atDeg(angle + side * 7).times(0.90 * rim).from(tyre.centre()));
            }
        }
        return path;
    }
}
