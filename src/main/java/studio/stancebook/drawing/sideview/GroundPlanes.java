package studio.stancebook.drawing.sideview;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.DegenerateShape;
import studio.stancebook.geometry.LimitedAngle;
import studio.stancebook.geometry.Point;
import studio.stancebook.geometry.TyreArc;
import studio.stancebook.geometry.UnderbodyAngles;

/** The wedges under the body: planes from the tyres to the points of the underbody that limit them (ISO 612). */
final class GroundPlanes {

    private final Vehicle vehicle;
    private final DrawingBuilder drawing;
    private final Marking marking;
    private final Extent extent;
    private final @Nullable DrawnTyre front;
    private final @Nullable DrawnTyre rear;
    private final Optional<UnderbodyAngles> computed;

    GroundPlanes(Vehicle vehicle, DrawingBuilder drawing, Marking marking, Extent extent) {
        this.vehicle = vehicle;
        this.drawing = drawing;
        this.marking = marking;
        this.extent = extent;
        this.front = vehicle.tyre(Axle.FRONT).orElse(null);
        this.rear = vehicle.tyre(Axle.REAR).orElse(null);
        this.computed = compute();
    }

    private Optional<UnderbodyAngles> compute() {
        if (front == null || rear == null || vehicle.points(Polyline.UNDERBODY).isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    UnderbodyAngles.of(vehicle.wheelbase(), arc(front), arc(rear), vehicle.points(Polyline.UNDERBODY)));
        } catch (DegenerateShape overlapping) {
            return Optional.empty();
        }
    }

    private static TyreArc arc(DrawnTyre tyre) {
        return TyreArc.onGround(tyre.x(), tyre.centreHeight());
    }

    void draw() {
        if (front != null) {
            overhang(front, -1, computed.flatMap(UnderbodyAngles::approach), Dimension.APPROACH_ANGLE, Part.APPROACH);
        }
        if (rear != null) {
            overhang(rear, 1, computed.flatMap(UnderbodyAngles::departure), Dimension.DEPARTURE_ANGLE, Part.DEPARTURE);
        }
        computed.flatMap(UnderbodyAngles::ramp).ifPresent(this::ramp);
    }

    /** The wedge ahead of the front or behind the rear tyre: from geometry, else at the typed angle in dashes. */
    private void overhang(DrawnTyre tyre, int side, Optional<LimitedAngle> limited, Dimension typed, Part part) {
        if (limited.isPresent()) {
            wedge(tyre, side, limited.get().deg(), marking.pen("plane", part));
            drawing.disc(
                    LayerId.WEDGES, marking.pen("touch", part), limited.get().touch(), 0.22 * extent.em());
        } else if (computed.isEmpty()) {
            vehicle.scalar(typed).ifPresent(deg -> wedge(tyre, side, deg, marking.pen("plane-typed", part)));
        }
    }

    private void wedge(DrawnTyre tyre, int side, double deg, String pen) {
        if (deg < 0.5 || deg > 85) {
            return;
        }
        Point touch = tangentPoint(tyre, side, deg);
        double slope = Math.tan(Math.toRadians(deg));
        double foot = touch.x() - side * touch.z() / slope;
        double wall = side < 0
                ? Math.max(extent.left(), vehicle.frontEnd() - 1.2 * extent.em())
                : Math.min(extent.right(), vehicle.rearEnd() + 1.2 * extent.em());
        double rise = Math.min(Math.abs(wall - touch.x()) * slope, 1.5 * vehicle.nominalDiameter());
        Point end = new Point(touch.x() + side * rise / slope, touch.z() + rise);
        drawing.stroke(
                LayerId.WEDGES,
                "wedge",
                new PathBuilder().moveTo(foot, 0).lineTo(end).lineTo(end.x(), 0).close());
        drawing.line(LayerId.WEDGES, pen, touch, end);
    }

    /** Where a plane at that inclination touches the tyre arc from below, on one side of it. */
    private static Point tangentPoint(DrawnTyre tyre, int side, double deg) {
        double angle = Math.toRadians(deg);
        double r = tyre.centreHeight();
        return new Point(tyre.x() + side * r * Math.sin(angle), r - r * Math.cos(angle));
    }

    private void ramp(LimitedAngle limited) {
        if (front == null || rear == null || limited.deg() < 0.5) {
            return;
        }
        Point summit = limited.touch();
        double frontDeg = inclinationDeg(front, summit);
        double rearDeg = inclinationDeg(rear, summit);
        Point fromFront = tangentPoint(front, 1, frontDeg);
        Point fromRear = tangentPoint(rear, -1, rearDeg);
        drawing.stroke(
                LayerId.WEDGES,
                "wedge",
                new PathBuilder()
                        .moveTo(fromFront)
                        .lineTo(summit)
                        .lineTo(fromRear)
                        .close());
        drawing.stroke(
                LayerId.WEDGES,
                marking.pen("plane", Part.RAMP),
                new PathBuilder().moveTo(fromFront).lineTo(summit).lineTo(fromRear));
        drawing.disc(LayerId.WEDGES, marking.pen("touch", Part.RAMP), summit, 0.22 * extent.em());
    }

    /** The inclination of the plane that touches the tyre arc from below and passes through a point. */
    private static double inclinationDeg(DrawnTyre tyre, Point point) {
        double ahead = Math.abs(point.x() - tyre.x());
        double above = point.z() - tyre.centreHeight();
        double distance = Math.max(Math.hypot(ahead, above), tyre.centreHeight());
        return Math.toDegrees(Math.atan2(above, ahead) + Math.asin(tyre.centreHeight() / distance));
    }
}
