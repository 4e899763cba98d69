package studio.stancebook.drawing;

import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.geometry.Point;

/**
 * A side glass that could be there, set in from the screen, the roof and the backlight and standing on the belt line:
 * drawn in where none is recorded, so that the doors have something to end at.
 */
record Glass(Point frontBase, Point frontTop, Point rearTop, Point rearBase, Point beltFront, Point beltRear) {

    /** Null without belt line, windscreen and the rear end of the roof. */
    static @Nullable Glass of(Vehicle vehicle) {
        Point beltFront = vehicle.landmark(Landmark.BELT_FRONT).orElse(null);
        Point beltRear = vehicle.landmark(Landmark.BELT_REAR).orElse(null);
        Point cowl = vehicle.landmark(Landmark.COWL).orElse(null);
        Point screenTop = vehicle.landmark(Landmark.SCREEN_TOP).orElse(null);
        Point roofEnd = vehicle.landmark(Landmark.BACKLIGHT_TOP).orElse(null);
        if (beltFront == null || beltRear == null || cowl == null || screenTop == null || roofEnd == null) {
            return null;
        }
        Point base = vehicle.landmark(Landmark.BACKLIGHT_BASE)
                .orElse(new Point(roofEnd.x() + 0.2 * vehicle.nominalDiameter(), beltRear.z()));
        boolean inOrder = cowl.x() < screenTop.x() && screenTop.x() < roofEnd.x() && beltFront.x() < beltRear.x();
        boolean upright = beltFront.z() < screenTop.z() && beltRear.z() < roofEnd.z();
        return inOrder && upright
                ? inside(vehicle.nominalDiameter(), beltFront, beltRear, cowl, screenTop, roofEnd, base)
                : null;
    }

    private static Glass inside(
            double d, Point beltFront, Point beltRear, Point cowl, Point screenTop, Point roofEnd, Point base) {
        Vector screen = Vector.between(cowl, screenTop).unit();
        double rail = 0.085 * d;
        Point frontTop = new Point(screenTop.x() + 0.13 * d, screenTop.z() - rail * 0.75);
        double frontX = crossing(frontTop, screen, beltFront, beltRear);
        double lean = Math.toDegrees(Math.atan2(roofEnd.z() - base.z(), Math.max(1, base.x() - roofEnd.x())));
        double pillar = lean < 50 ? 0.24 * d : 0.17 * d;
        Point rearTop = new Point(roofEnd.x() - pillar, roofEnd.z() - rail);
        Vector backlight = Vector.between(roofEnd, base).unit();
        double rearX = Math.min(crossing(rearTop, backlight, beltFront, beltRear), base.x() - pillar);
        Point frontBase = onBelt(frontX, beltFront, beltRear);
        Point rearBase = onBelt(Math.max(rearX, frontX + d), beltFront, beltRear);
        return new Glass(frontBase, frontTop, rearTop, rearBase, beltFront, beltRear);
    }

    /** The x at which the line from {@code origin} along {@code direction} meets the belt. */
    private static double crossing(Point origin, Vector direction, Point beltFront, Point beltRear) {
        double slope = (beltRear.z() - beltFront.z()) / (beltRear.x() - beltFront.x());
        double gain = direction.z() - slope * direction.x();
        if (Math.abs(gain) < 1e-6) {
            return origin.x();
        }
        double above = origin.z() - (beltFront.z() + slope * (origin.x() - beltFront.x()));
        return origin.x() - above / gain * direction.x();
    }

    private static Point onBelt(double x, Point front, Point rear) {
        double slope = (rear.z() - front.z()) / (rear.x() - front.x());
        return new Point(x, front.z() + slope * (x - front.x()));
    }

    /** The height of the belt line at {@code x}. */
    double beltAt(double x) {
        return onBelt(x, beltFront, beltRear).z();
    }

    /** The height of the upper edge of the glass at {@code x}. */
    double roofAt(double x) {
        double t = (x - frontTop.x()) / (rearTop.x() - frontTop.x());
        double crown = 0.16 * (1 - Math.min(1, Math.abs(2 * t - 1))) * (frontTop.z() - beltAt(frontTop.x()));
        return frontTop.z() + t * (rearTop.z() - frontTop.z()) + Math.max(0, crown);
    }

    /** Its edge, closed. */
    PathData path(int decimals) {
        double quarter = (rearTop.x() - frontTop.x()) / 4;
        Point first = new Point(frontTop.x() + quarter, roofAt(frontTop.x() + quarter));
        Point middle = new Point(frontTop.x() + 2 * quarter, roofAt(frontTop.x() + 2 * quarter));
        Point third = new Point(frontTop.x() + 3 * quarter, roofAt(frontTop.x() + 3 * quarter));
        return new SmoothLine(75)
                .straightFrom(frontBase)
                .through(frontTop)
                .through(first)
                .through(middle)
                .through(third)
                .straightFrom(rearTop)
                .straightFrom(rearBase)
                .straightFrom(frontBase)
                .into(new PathData(decimals))
                .close();
    }
}
