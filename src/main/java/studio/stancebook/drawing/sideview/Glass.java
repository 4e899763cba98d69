package studio.stancebook.drawing.sideview;

import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.geometry.Point;

/**
 * A side glass that could be there, set in from the screen, the roof and the backlight and standing on the belt line:
 * drawn in where none is recorded, so that the doors have something to end at.
 */
record Glass(
        Point frontBase, Point frontTop, Point rearTop, Point rearBase, Point beltFront, Point beltRear, double crown) {

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
        double apex = vehicle.landmark(Landmark.ROOF_APEX).map(Point::z).orElse(Math.max(screenTop.z(), roofEnd.z()));
        boolean inOrder = cowl.x() < screenTop.x() && screenTop.x() < roofEnd.x() && beltFront.x() < beltRear.x();
        boolean upright = beltFront.z() < screenTop.z() && beltRear.z() < roofEnd.z();
        return inOrder && upright
                ? inside(vehicle.nominalDiameter(), beltFront, beltRear, cowl, screenTop, roofEnd, base, apex)
                : null;
    }

    private static Glass inside(
            double d,
            Point beltFront,
            Point beltRear,
            Point cowl,
            Point screenTop,
            Point roofEnd,
            Point base,
            double apex) {
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
        double crown = Math.max(0, apex - rail - 0.5 * (frontTop.z() + rearTop.z()));
        return new Glass(frontBase, frontTop, rearTop, rearBase, beltFront, beltRear, crown);
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
        return frontTop.z() + t * (rearTop.z() - frontTop.z()) + crown * Math.max(0, 1 - (2 * t - 1) * (2 * t - 1));
    }

    /** Its edge, closed, with rounded upper corners. */
    PathBuilder path() {
        double radius = 0.16 * (frontTop.z() - beltAt(frontTop.x()));
        Point afterTop = alongRoof(frontTop.x() + 1.8 * radius);
        Point beforeEnd = alongRoof(rearTop.x() - radius);
        Point up =
                Vector.between(frontTop, frontBase).unit().times(1.4 * radius).from(frontTop);
        Point down = Vector.between(rearTop, rearBase).unit().times(radius).from(rearTop);
        Point middle = alongRoof((frontTop.x() + rearTop.x()) / 2);
        PathBuilder path = new PathBuilder().moveTo(frontBase).lineTo(up).curveTo(near(up), near(afterTop), afterTop);
        new SmoothLine().through(afterTop).through(middle).through(beforeEnd).on(path);
        Vector last = Vector.between(beforeEnd, rearTop).times(0.55);
        Point turn = Vector.between(down, rearTop).times(0.55).from(down);
        return path.curveTo(last.from(beforeEnd), turn, down).lineTo(rearBase).close();
    }

    private Point alongRoof(double x) {
        return new Point(x, roofAt(x));
    }

    /** Part of the way from a point to the front upper corner. */
    private Point near(Point point) {
        return Vector.between(point, frontTop).times(0.55).from(point);
    }
}
