package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.geometry.Point;

/**
 * The upper line of the body from the nose to the tail: the recorded outline, else a line laid through the landmarks,
 * completed in a lighter line where the overhangs say how far the body goes.
 */
final class Silhouette {

    private static final int MOST_OUTLINE_POINTS = 160;

    private final Vehicle vehicle;
    private final boolean small;
    private final Placement placement;

    Silhouette(Vehicle vehicle, boolean small) {
        this(vehicle, small, Placement.AS_RECORDED);
    }

    Silhouette(Vehicle vehicle, boolean small, Placement placement) {
        this.vehicle = vehicle;
        this.small = small;
        this.placement = placement;
    }

    private PathBuilder path() {
        return new PathBuilder(placement);
    }

    /** Points along the recorded line, at most {@code stepMm} apart, for labels to keep clear of. */
    List<Point> spine(double stepMm) {
        List<Point> corners =
                outlined() ? outline() : marks().stream().map(LandmarkPoint::at).toList();
        List<Point> points = new ArrayList<>();
        for (int i = 1; i < corners.size(); i++) {
            Vector step = Vector.between(corners.get(i - 1), corners.get(i));
            int pieces = (int) Math.ceil(step.length() / stepMm);
            for (int j = 0; j < pieces; j++) {
                points.add(step.times((double) j / pieces).from(corners.get(i - 1)));
            }
        }
        return points;
    }

    /** A piece of the line and the pen that it is drawn with. */
    record Piece(String pen, Part part, PathBuilder path) {}

    /** The line from front to rear; empty when there is too little to draw one. */
    List<Piece> pieces() {
        List<Point> outline = outline();
        return outline.isEmpty() ? ofLandmarks() : List.of(ofOutline(outline));
    }

    boolean outlined() {
        return !vehicle.points(Polyline.OUTLINE).isEmpty();
    }

    /** The recorded outline from front to rear; empty when there is none. */
    List<Point> outline() {
        List<Point> points = new ArrayList<>(vehicle.points(Polyline.OUTLINE));
        if (points.size() > 1
                && points.get(0).x() > points.get(points.size() - 1).x()) {
            Collections.reverse(points);
        }
        return points;
    }

    private Piece ofOutline(List<Point> outline) {
        TracedCurve line = new TracedCurve(outline, small ? 6 : 1.2, small ? 40 : MOST_OUTLINE_POINTS);
        return new Piece("tape", Part.LENGTH, line.into(path()));
    }

    private List<Piece> ofLandmarks() {
        List<LandmarkPoint> marks = marks();
        SmoothLine line = new SmoothLine();
        for (int i = 0; i < marks.size(); i++) {
            LandmarkPoint mark = marks.get(i);
            boolean straight = i + 1 < marks.size() && straightBetween(mark.landmark, marks.get(i + 1).landmark);
            line = straight ? line.straightFrom(mark.at) : line.through(mark.at);
        }
        List<Piece> pieces = new ArrayList<>();
        nose(marks).ifPresent(pieces::add);
        for (int i = 0; i + 1 < line.size(); i++) {
            pieces.add(pieceBetween(marks.get(i), marks.get(i + 1), line.piece(i, path())));
        }
        tail(marks).ifPresent(pieces::add);
        return pieces;
    }

    private record LandmarkPoint(Landmark landmark, Point at) {}

    private List<LandmarkPoint> marks() {
        List<LandmarkPoint> marks = new ArrayList<>();
        for (Landmark landmark : List.of(
                Landmark.COWL,
                Landmark.SCREEN_TOP,
                Landmark.ROOF_APEX,
                Landmark.BACKLIGHT_TOP,
                Landmark.BACKLIGHT_BASE,
                Landmark.TAIL_EDGE)) {
            vehicle.landmark(landmark)
                    .filter(point -> clearOfLast(marks, point))
                    .ifPresent(point -> marks.add(new LandmarkPoint(landmark, point)));
        }
        return marks;
    }

    private static boolean clearOfLast(List<LandmarkPoint> marks, Point point) {
        return marks.isEmpty()
                || Vector.between(marks.get(marks.size() - 1).at, point).length() >= 1;
    }

    private static boolean straightBetween(Landmark from, Landmark to) {
        boolean screen = from == Landmark.COWL;
        boolean backlight = from == Landmark.BACKLIGHT_TOP && to == Landmark.BACKLIGHT_BASE;
        return screen || backlight;
    }

    private static Piece pieceBetween(LandmarkPoint from, LandmarkPoint to, PathBuilder path) {
        int step = to.landmark.ordinal() - from.landmark.ordinal();
        boolean roof = from.landmark == Landmark.SCREEN_TOP && to.landmark == Landmark.BACKLIGHT_TOP;
        return new Piece(step == 1 || roof ? "tape" : "drawn-in", partOf(from.landmark), path);
    }

    private static Part partOf(Landmark from) {
        return switch (from) {
            case COWL -> Part.SCREEN;
            case BACKLIGHT_TOP -> Part.BACKLIGHT;
            default -> Part.ROOF;
        };
    }

    /** Where the body begins at its lower front edge: as far as it is known. */
    Point noseFoot() {
        List<Point> outline = outline();
        if (!outline.isEmpty()) {
            return outline.get(0);
        }
        List<Point> underbody = vehicle.points(Polyline.UNDERBODY);
        double front = vehicle.frontEnd();
        double d = vehicle.nominalDiameter();
        boolean ahead = !underbody.isEmpty() && underbody.get(0).x() < -d / 2;
        return ahead ? underbody.get(0) : new Point(front + 0.12 * d, footHeight());
    }

    /** Where the body ends at its lower rear edge. */
    Point tailFoot() {
        List<Point> outline = outline();
        if (!outline.isEmpty()) {
            return outline.get(outline.size() - 1);
        }
        List<Point> underbody = vehicle.points(Polyline.UNDERBODY);
        double rear = vehicle.rearEnd();
        double d = vehicle.nominalDiameter();
        Point last = underbody.isEmpty() ? null : underbody.get(underbody.size() - 1);
        boolean behind = last != null && last.x() > vehicle.wheelbase() + d / 2;
        return behind && last != null ? last : new Point(rear - 0.12 * d, footHeight() + 0.08 * d);
    }

    private double footHeight() {
        Double rocker = vehicle.find(Reading.ROCKER_HEIGHT);
        return rocker == null ? 0.4 * vehicle.nominalDiameter() : rocker;
    }

    /** The bonnet and the nose, drawn in from the cowl to the recorded front overhang. */
    private Optional<Piece> nose(List<LandmarkPoint> marks) {
        Double overhang = vehicle.find(Reading.FRONT_OVERHANG);
        if (overhang == null || marks.isEmpty() || marks.get(0).landmark != Landmark.COWL) {
            return Optional.empty();
        }
        Point cowl = marks.get(0).at;
        double front = -overhang;
        double d = vehicle.nominalDiameter();
        double length = cowl.x() - front;
        double screenDeg = marks.size() > 1 ? steepness(cowl, marks.get(1).at) : 45;
        double drop = length * Math.tan(Math.toRadians(bonnetDeg(screenDeg, length / d)));
        double edge = Math.max(cowl.z() - drop, leastBonnet(d));
        @Nullable
        Point bonnet = vehicle.landmark(Landmark.BONNET_EDGE)
                .filter(at -> at.x() > front && at.x() < cowl.x())
                .orElse(null);
        Point lip = bonnet == null ? new Point(front + 0.10 * d, edge - 0.07 * d) : bonnet;
        Point foot = noseFoot();
        double chin = foot.z() + 0.45 * (lip.z() - foot.z());
        Point tip = new Point(front, Math.max(chin, foot.z() + 0.05 * d));
        PathBuilder path = path().moveTo(foot);
        path.curveTo(
                new Point(foot.x() - 0.7 * (foot.x() - front), foot.z() + 0.02 * d),
                new Point(front, tip.z() - 0.45 * (tip.z() - foot.z())),
                tip);
        path.curveTo(
                new Point(front, tip.z() + 0.5 * (lip.z() - tip.z())),
                new Point(lip.x() - 0.06 * d, lip.z() - 0.10 * d),
                lip);
        double rise = bonnet == null ? 0.10 * d : 0.4 * (cowl.z() - lip.z());
        double run = bonnet == null ? 0.10 * d : 0.3 * (cowl.x() - lip.x());
        double back = bonnet == null ? 0.55 * length : 0.4 * (cowl.x() - lip.x());
        path.curveTo(
                new Point(lip.x() + run, lip.z() + rise),
                new Point(cowl.x() - back, cowl.z() - 0.26 * (cowl.z() - (bonnet == null ? edge : lip.z()))),
                cowl);
        return Optional.of(new Piece("drawn-in", Part.DASH, path));
    }

    private static double steepness(Point from, Point to) {
        return Math.toDegrees(Math.atan2(to.z() - from.z(), to.x() - from.x()));
    }

    /** How steeply the bonnet falls: a fast screen goes with a falling bonnet, a short bonnet falls more steeply. */
    private static double bonnetDeg(double screenDeg, double lengthInWheels) {
        double fast = Math.max(0, Math.min(1, (52 - screenDeg) / 24));
        double brief = Math.max(0, Math.min(1, (1.7 - lengthInWheels) / 0.8));
        return 3.5 + 6 * fast + 12 * brief;
    }

    /** A bonnet stays above the tyre and its opening. */
    private double leastBonnet(double d) {
        double arch = vehicle.landmark(Landmark.ARCH_FRONT_TOP).map(Point::z).orElse(1.04 * d);
        return arch + 0.06 * d;
    }

    /** The tail, drawn in from the last landmark to the recorded rear overhang. */
    private Optional<Piece> tail(List<LandmarkPoint> marks) {
        Double overhang = vehicle.find(Reading.REAR_OVERHANG);
        @Nullable Point edge = lastAtTheRear(marks);
        if (overhang == null || edge == null) {
            return Optional.empty();
        }
        double rear = vehicle.wheelbase() + overhang;
        Point foot = tailFoot();
        Point tip = new Point(rear, foot.z() + 0.46 * (edge.z() - foot.z()));
        double drop = edge.z() - tip.z();
        PathBuilder path = path().moveTo(edge);
        path.curveTo(
                new Point(edge.x() + 0.45 * (rear - edge.x()), edge.z() - 0.35 * drop),
                new Point(rear, tip.z() + 0.45 * drop),
                tip);
        path.curveTo(
                new Point(rear, tip.z() - 0.55 * (tip.z() - foot.z())),
                new Point(foot.x() + 0.75 * (rear - foot.x()), foot.z()),
                foot);
        return Optional.of(new Piece("drawn-in", Part.REAR_OVERHANG, path));
    }

    private static @Nullable Point lastAtTheRear(List<LandmarkPoint> marks) {
        if (marks.isEmpty()) {
            return null;
        }
        LandmarkPoint last = marks.get(marks.size() - 1);
        return last.landmark.ordinal() >= Landmark.BACKLIGHT_TOP.ordinal() ? last.at : null;
    }
}
