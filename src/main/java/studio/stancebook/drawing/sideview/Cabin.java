package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;

/** Belt line, side glass, shut lines and H-point: what is recorded in feature line, what completes it in thin line. */
final class Cabin {

    private final Vehicle vehicle;
    private final DrawingBuilder drawing;
    private final Marking marking;
    private final double d;
    private final boolean small;

    Cabin(Vehicle vehicle, DrawingBuilder drawing, Marking marking, boolean small) {
        this.small = small;
        this.vehicle = vehicle;
        this.drawing = drawing;
        this.marking = marking;
        this.d = vehicle.nominalDiameter();
    }

    void draw() {
        Optional<Point> front = vehicle.landmark(Landmark.BELT_FRONT);
        Optional<Point> rear = vehicle.landmark(Landmark.BELT_REAR);
        if (front.isPresent() && rear.isPresent()) {
            drawing.line(LayerId.DETAIL, marking.pen("feature", Part.BELT), front.get(), rear.get());
        }
        Glass glass = Glass.of(vehicle);
        glass(glass);
        doors(glass);
        vehicle.landmark(Landmark.H_POINT).ifPresent(this::hPoint);
    }

    /** The side glass without belt line and doors, for a small picture. */
    void glassAlone() {
        glass(Glass.of(vehicle));
    }

    private void glass(@Nullable Glass drawnIn) {
        List<Point> recorded = vehicle.points(Polyline.DAYLIGHT_OPENING);
        if (!recorded.isEmpty()) {
            drawing.stroke(LayerId.DETAIL, marking.pen("feature", Part.BELT), closed(recorded));
        } else if (drawnIn != null) {
            drawing.stroke(LayerId.DETAIL, "shut", drawnIn.path());
        }
    }

    private PathBuilder closed(List<Point> points) {
        List<Point> around = new ArrayList<>(points);
        around.add(points.get(0));
        return new TracedCurve(around, small ? 8 : 1.2, small ? 24 : 90)
                .into(new PathBuilder())
                .close();
    }

    private void doors(@Nullable Glass glass) {
        Point front = vehicle.landmark(Landmark.FRONT_DOOR_CUT).orElse(null);
        Point rear = vehicle.landmark(Landmark.REAR_DOOR_CUT).orElse(null);
        if (glass == null) {
            if (front != null) {
                stub(front, Part.FRONT_DOOR);
            }
            if (rear != null) {
                stub(rear, Part.REAR_DOOR);
            }
            return;
        }
        if (front != null) {
            frontCut(front, glass);
        }
        if (rear != null) {
            rearCut(rear, glass);
        }
        if (front != null && rear != null && rear.x() - front.x() > 1.9 * d) {
            pillar(front, rear, glass);
        }
    }

    private void stub(Point cut, Part part) {
        drawing.line(LayerId.DETAIL, marking.pen("shut", part), cut, new Point(cut.x(), cut.z() + 0.6 * d));
    }

    private void frontCut(Point cut, Glass glass) {
        Point base = new Point(
                glass.frontBase().x() - 0.10 * d, glass.beltAt(glass.frontBase().x()));
        double rise = base.z() - cut.z();
        Point top = glass.frontTop();
        PathBuilder path = new PathBuilder()
                .moveTo(cut)
                .curveTo(
                        new Point(cut.x(), cut.z() + 0.5 * rise),
                        new Point(base.x() - 0.02 * d, base.z() - 0.3 * rise),
                        base)
                .lineTo(new Point(top.x() - 0.06 * d, top.z() + 0.015 * d));
        drawing.stroke(LayerId.DETAIL, marking.pen("shut", Part.FRONT_DOOR), path);
    }

    private void rearCut(Point cut, Glass glass) {
        DrawnTyre tyre = vehicle.tyre(Axle.REAR).orElse(null);
        boolean atTheWheel = tyre != null && tyre.x() - cut.x() < 0.95 * d && tyre.x() - cut.x() > 0.5 * d;
        double behindWheel =
                Math.min(vehicle.wheelbase() - 0.02 * d, glass.rearTop().x() - 0.12 * d);
        double beltX = atTheWheel ? Math.max(cut.x(), behindWheel) : cut.x() + 0.03 * d;
        Point base = new Point(beltX, glass.beltAt(beltX));
        PathBuilder path = new PathBuilder();
        if (atTheWheel && tyre != null) {
            aroundTheWheel(path, cut, tyre, base);
        } else {
            double rise = base.z() - cut.z();
            path.moveTo(cut)
                    .curveTo(
                            new Point(cut.x(), cut.z() + 0.42 * rise),
                            new Point(base.x() + 0.03 * d, base.z() - 0.3 * rise),
                            base);
        }
        double topX = Math.min(glass.rearTop().x() - 0.04 * d, beltX - 0.02 * d);
        path.lineTo(new Point(topX, glass.roofAt(topX)));
        drawing.stroke(LayerId.DETAIL, marking.pen("shut", Part.REAR_DOOR), path);
    }

    /** Up from the sill, concentric with the wheel opening, then on to the belt. */
    private void aroundTheWheel(PathBuilder path, Point cut, DrawnTyre tyre, Point base) {
        double opening = vehicle.landmark(Landmark.ARCH_REAR_TOP)
                .map(top -> top.z() - tyre.centreHeight())
                .orElse(tyre.radius() * 1.1);
        double radius = Math.max(tyre.x() - cut.x(), opening + 0.05 * d);
        double from = Math.max(cut.z(), tyre.centreHeight());
        double level = Math.min(from - tyre.centreHeight(), radius * 0.7);
        Point start = new Point(tyre.x() - Math.sqrt(radius * radius - level * level), from);
        double beside = Math.max(-1, Math.min(1, (base.x() - 0.08 * radius - tyre.x()) / radius));
        double leaveDeg = Math.max(128, Math.toDegrees(Math.acos(beside)));
        Point leave = Vector.atDeg(leaveDeg).times(radius).from(tyre.centre());
        boolean onTheSill = cut.x() <= start.x() + 1;
        path.moveTo(onTheSill ? cut : start).lineTo(start);
        if (leave.z() > start.z()) {
            path.arcTo(radius, false, true, leave);
        }
        double left = Vector.between(leave, base).length();
        double down = Math.max(0, base.z() - leave.z()) * 0.6;
        Point on = Vector.atDeg(leaveDeg - 90).times(0.35 * left).from(leave);
        path.curveTo(on, new Point(base.x() + 0.02 * radius, base.z() - down), base);
    }

    /** The shut line between the doors, which no landmark records. */
    private void pillar(Point front, Point rear, Glass glass) {
        double x = front.x() + 0.575 * (rear.x() - front.x());
        double sill = front.z() + 0.575 * (rear.z() - front.z());
        double belt = glass.beltAt(x);
        double topX = x - 0.03 * d;
        PathBuilder path = new PathBuilder()
                .moveTo(x - 0.02 * d, sill)
                .curveTo(
                        new Point(x + 0.03 * d, sill + 0.4 * (belt - sill)),
                        new Point(x + 0.02 * d, belt - 0.2 * d),
                        new Point(x, belt))
                .lineTo(topX, glass.roofAt(topX));
        drawing.stroke(LayerId.DETAIL, "shut", path);
    }

    private void hPoint(Point at) {
        double arm = 0.05 * d;
        PathBuilder cross = new PathBuilder()
                .moveTo(at.x() - arm, at.z())
                .lineTo(at.x() + arm, at.z())
                .moveTo(at.x(), at.z() - arm)
                .lineTo(at.x(), at.z() + arm);
        drawing.stroke(LayerId.DETAIL, marking.pen("shut", Part.SEAT), cross);
        drawing.disc(LayerId.DETAIL, marking.pen("shut", Part.SEAT), at, arm * 0.6);
    }
}
