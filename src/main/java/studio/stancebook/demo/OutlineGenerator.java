package studio.stancebook.demo;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.geometry.Point;

/** Draws the lines of an invented vehicle around its hard points. */
final class OutlineGenerator {

    private final Skeleton s;
    private final double d;

    OutlineGenerator(Skeleton skeleton) {
        this.s = skeleton;
        this.d = skeleton.d();
    }

    private static Point between(Point from, Point to, double share) {
        return new Point(from.x() + share * (to.x() - from.x()), from.z() + share * (to.z() - from.z()));
    }

    private static double slopeDeg(Point from, Point to) {
        return StrictMath.toDegrees(StrictMath.atan2(to.z() - from.z(), to.x() - from.x()));
    }

    /** The foot of the nose, on the plane that gives the approach angle. */
    Point noseFoot() {
        double ahead = s.frontOverhang() - 0.13 * d;
        return new Point(-ahead, planeAt(ahead, s.approachDeg()));
    }

    /** The foot of the tail, on the plane that gives the departure angle. */
    Point tailFoot() {
        double behind = s.rearOverhang() - 0.14 * d;
        return new Point(s.wheelbase() + behind, planeAt(behind, s.departureDeg()));
    }

    /** The height of the plane that touches the tyre from below, at a distance from the wheel centre. */
    private double planeAt(double distance, double degrees) {
        double angle = StrictMath.toRadians(degrees);
        double r = s.centre();
        return distance * StrictMath.tan(angle) + r - r / StrictMath.cos(angle);
    }

    /** The rigid underbody from the nose to the tail, on or above the planes of approach and departure. */
    List<Point> underbody() {
        double low = s.clearance();
        double end = s.wheelbase();
        double lip = 0.72 * s.frontOverhang();
        double tank = 0.62 * s.rearOverhang();
        List<Point> points = new ArrayList<>();
        points.add(noseFoot());
        points.add(new Point(-lip, Math.max(planeAt(lip, s.approachDeg()) + 0.03 * d, low)));
        points.add(new Point(-0.30 * d, low + 0.06 * d));
        points.add(new Point(0.30 * d, low + 0.03 * d));
        points.add(new Point(0.30 * end, low));
        points.add(new Point(0.72 * end, low + 0.01 * d));
        points.add(new Point(end - 0.28 * d, low + 0.04 * d));
        points.add(new Point(end + 0.32 * d, low + 0.07 * d));
        points.add(new Point(end + tank, Math.max(planeAt(tank, s.departureDeg()) + 0.03 * d, low + 0.05 * d)));
        points.add(tailFoot());
        return points.stream().map(Contour::rounded).toList();
    }

    /** The front upper edge of the bonnet. */
    Point bonnetEdge() {
        return new Point(s.noseRake() + 0.14 * d - s.frontOverhang(), s.noseHeight());
    }

    /** The upper silhouette from the foot of the nose to the foot of the tail. */
    List<Point> outline() {
        double front = -s.frontOverhang();
        Point foot = noseFoot();
        double tipZ = foot.z() + 0.42 * (s.noseHeight() - 0.10 * d - foot.z());
        Point tip = new Point(front, tipZ);
        Point edge = bonnetEdge();
        double edgeX = edge.x();
        double bonnet = slopeDeg(edge, s.cowl());
        double lipX = front + 0.5 * s.noseRake();
        double drop = Math.max(0.12 * d, (edgeX - lipX) * tan(bonnet + 24));
        Point lip = new Point(lipX, s.noseHeight() - drop);
        double brow = bonnet + 0.4 * (slopeDeg(lip, edge) - bonnet);
        Contour line = new Contour(foot, 168);
        line.to(tip, 90).to(lip, 0.72 * slopeDeg(tip, lip) + 0.28 * slopeDeg(lip, edge));
        line.to(edge, brow).to(s.cowl(), bonnet * 0.5, s.screenDeg());
        roof(line);
        tail(line);
        return line.points();
    }

    private void roof(Contour line) {
        double screen = s.screenDeg();
        double rise = slopeDeg(s.screenTop(), s.apex());
        double fall = slopeDeg(s.apex(), s.roofEnd());
        double header = rise + 0.72 * (screen - rise);
        line.straightTo(between(s.cowl(), s.screenTop(), 0.80));
        line.to(s.screenTop(), header).to(s.apex(), 0);
        double drop = -s.backlightDeg();
        boolean sharp = s.backlightDeg() > 62;
        double end = sharp ? fall * 1.6 : fall + 0.72 * (drop - fall);
        if (sharp) {
            Point corner = s.roofEnd();
            line.to(corner, end - 20, drop);
        } else {
            line.to(s.roofEnd(), end);
        }
        line.to(between(s.roofEnd(), s.backlightBase(), 0.24), drop);
    }

    private void tail(Contour line) {
        double drop = -s.backlightDeg();
        double deck = slopeDeg(s.backlightBase(), s.tailEdge());
        Point base = s.backlightBase();
        Point edge = s.tailEdge();
        line.straightTo(between(s.roofEnd(), base, 0.84));
        double fallen = 0.5 * (deck - 88);
        boolean bed = s.backlightDeg() > 62 && deck > -30;
        if (bed) {
            line.straightTo(base).turn(deck).straightTo(edge).turn(-86);
        } else {
            line.to(base, 0.72 * drop + 0.28 * deck)
                    .to(edge, deck > -40 ? deck * 0.8 : fallen, deck > -40 ? -74 : fallen);
        }
        Point foot = tailFoot();
        Point tip = new Point(s.tailX(), foot.z() + 0.48 * (edge.z() - foot.z()));
        line.to(tip, -90).to(foot, -168);
    }

    /** Where the belt line ends: ahead of the rear pillar, inside the body. */
    double beltEnd() {
        double slope = StrictMath.tan(StrictMath.toRadians(s.beltDeg()));
        double fall = tan(s.backlightDeg());
        double gap = s.roofEnd().z() - beltAt(s.roofEnd().x());
        double meets = s.roofEnd().x() + gap / (fall + slope);
        double pillar = s.backlightDeg() < 40 ? 0.34 * d : 0.14 * d;
        return Math.min(s.backlightBase().x(), meets) - pillar;
    }

    /** Height of the belt line at {@code x}. */
    double beltAt(double x) {
        double slope = StrictMath.tan(StrictMath.toRadians(s.beltDeg()));
        return s.cowl().z() - 0.005 * d + slope * (x - s.cowl().x());
    }

    /** The edge of the side glass: set in from screen, roof and backlight, on the belt line. */
    List<Point> glass() {
        double screen = s.screenDeg();
        Point top = new Point(s.screenTop().x() + 0.14 * d, s.screenTop().z() - 0.075 * d);
        double frontX = top.x() - (top.z() - beltAt(top.x() - 0.6 * d)) / tan(screen) - 0.02 * d;
        double pillar = s.backlightDeg() < 40 ? 0.26 * d : s.backlightDeg() < 62 ? 0.19 * d : 0.15 * d;
        Point back = new Point(s.roofEnd().x() - pillar, s.roofEnd().z() - 0.085 * d);
        double baseX = back.x() + (back.z() - beltAt(s.backlightBase().x())) / tan(s.backlightDeg()) * 0.72;
        double rearX = Math.min(baseX, s.backlightBase().x() - pillar);
        Point frontBase = new Point(frontX, beltAt(frontX));
        Point rearBase = new Point(Math.max(rearX, back.x() - 0.05 * d), beltAt(rearX));
        Point crown = new Point(
                Math.min(Math.max(s.apex().x(), top.x() + 0.4 * d), back.x() - 0.4 * d), s.height() - 0.085 * d);
        double fall = slopeDeg(crown, back);
        Point backCut = new Point(back.x() - 0.13 * d, back.z() - 0.13 * d * tan(fall));
        Point rearCut = between(back, rearBase, Math.min(0.5, 0.12 * d / (back.z() - rearBase.z())));
        Contour line = new Contour(frontBase, screen);
        line.straightTo(between(frontBase, top, 0.72));
        line.to(top, 0.6 * screen).to(crown, 0).to(backCut, fall * 1.3);
        line.to(rearCut, slopeDeg(back, rearBase)).straightTo(rearBase);
        line.turn(180 + s.beltDeg()).straightTo(frontBase);
        List<Point> points = new ArrayList<>(line.points());
        points.remove(points.size() - 1);
        return points;
    }

    private static double tan(double degrees) {
        return StrictMath.tan(StrictMath.toRadians(degrees));
    }
}
