package studio.stancebook.drawing.sideview;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.geometry.Point;

/** The lower line of the body: valances, wheel openings and rocker, and the rigid underbody behind them. */
final class LowerBody {

    /** Space over a tyre where no arch is recorded, in tyre radii: only to draw an opening at all. */
    private static final double DRAWN_IN_GAP = 0.12;

    /** The handle of a curve that is closest to a quarter of an ellipse, as a share of the axis. */
    private static final double QUARTER = 0.5523;

    private static final ArchLandmarks FRONT =
            new ArchLandmarks(Landmark.ARCH_FRONT_FORE, Landmark.ARCH_FRONT_TOP, Landmark.ARCH_FRONT_AFT);
    private static final ArchLandmarks REAR =
            new ArchLandmarks(Landmark.ARCH_REAR_FORE, Landmark.ARCH_REAR_TOP, Landmark.ARCH_REAR_AFT);

    private final Vehicle vehicle;
    private final Silhouette silhouette;
    private final DrawingBuilder drawing;
    private final Marking marking;

    LowerBody(Vehicle vehicle, Silhouette silhouette, DrawingBuilder drawing, Marking marking) {
        this.vehicle = vehicle;
        this.silhouette = silhouette;
        this.drawing = drawing;
        this.marking = marking;
    }

    /**
     * A wheel opening: its edges and crown, a quarter of an ellipse between each two, and where its two legs meet the lower
     * edge of the body.
     */
    private record Opening(
            DrawnTyre tyre,
            double radius,
            boolean recorded,
            @Nullable Edges edges,
            Point frontLeg,
            Point rearLeg) {}

    /** The recorded edges of a wheel opening and its crown between them. */
    private record Edges(Point fore, Point crown, Point aft) {}

    /** @param closed whether there is an upper body that the valances lead to */
    void draw(boolean closed) {
        Double rocker = vehicle.find(Reading.ROCKER_HEIGHT);
        Optional<DrawnTyre> front = vehicle.tyre(Axle.FRONT);
        Optional<DrawnTyre> rear = vehicle.tyre(Axle.REAR);
        if (rocker == null || front.isEmpty() || rear.isEmpty()) {
            return;
        }
        Point rockerFront = vehicle.landmark(Landmark.ROCKER_FRONT).orElse(null);
        Point rockerRear = vehicle.landmark(Landmark.ROCKER_REAR).orElse(null);
        double frontZ = rockerFront == null ? rocker : rockerFront.z();
        double rearZ = rockerRear == null ? rocker : rockerRear.z();
        Point nose = silhouette.noseFoot();
        Point tail = silhouette.tailFoot();
        Opening ahead = opening(front.get(), FRONT, nose.z(), frontZ);
        Opening behind = opening(rear.get(), REAR, rearZ, tail.z());
        arch(ahead, Part.FRONT_ARCH);
        arch(behind, Part.REAR_ARCH);
        sill(ahead, behind, rockerFront, rockerRear);
        if (closed) {
            valances(ahead, behind, nose, tail);
        }
    }

    private record ArchLandmarks(Landmark fore, Landmark top, Landmark aft) {}

    private Opening opening(DrawnTyre tyre, ArchLandmarks arch, double frontZ, double rearZ) {
        @Nullable Point recorded = vehicle.landmark(arch.top()).orElse(null);
        double topZ = recorded == null ? tyre.top() + DRAWN_IN_GAP * tyre.radius() : recorded.z();
        double radius = Math.max(topZ - tyre.centreHeight(), tyre.radius() * 1.02);
        Edges edges = edges(arch, new Point(tyre.x(), topZ));
        return edges == null
                ? new Opening(
                        tyre,
                        radius,
                        recorded != null,
                        null,
                        leg(tyre, radius, -1, frontZ),
                        leg(tyre, radius, 1, rearZ))
                : new Opening(tyre, radius, true, edges, leg(edges.fore(), -1, frontZ), leg(edges.aft(), 1, rearZ));
    }

    /** Null unless both edges are recorded, on either side of the crown and below it. */
    private @Nullable Edges edges(ArchLandmarks arch, Point drawnIn) {
        Point fore = vehicle.landmark(arch.fore()).orElse(null);
        Point aft = vehicle.landmark(arch.aft()).orElse(null);
        Point crown = vehicle.landmark(arch.top()).orElse(drawnIn);
        if (fore == null || aft == null || fore.x() >= crown.x() || crown.x() >= aft.x()) {
            return null;
        }
        return Math.max(fore.z(), aft.z()) < crown.z() ? new Edges(fore, crown, aft) : null;
    }

    /** Flared below a recorded edge; at the edge where the body ends above it. */
    private static Point leg(Point edge, int side, double z) {
        return z >= edge.z() ? edge : new Point(edge.x() + side * 0.14 * (edge.z() - z), z);
    }

    /** Where the opening's edge reaches height {@code z}: on its circle above the wheel centre, flared below it. */
    private static Point leg(DrawnTyre tyre, double radius, int side, double z) {
        double rise = z - tyre.centreHeight();
        double reach = rise > 0 && rise < radius ? Math.sqrt(radius * radius - rise * rise) : radius - 0.14 * rise;
        return new Point(tyre.x() + side * reach, z);
    }

    private void arch(Opening opening, Part part) {
        PathBuilder path = opening.edges() == null ? circle(opening) : ellipse(opening, opening.edges());
        drawing.stroke(LayerId.BODY, marking.pen(opening.recorded() ? "tape" : "drawn-in", part), path);
    }

    private static PathBuilder ellipse(Opening opening, Edges edges) {
        PathBuilder path = new PathBuilder().moveTo(opening.frontLeg());
        if (!opening.frontLeg().equals(edges.fore())) {
            path.lineTo(edges.fore());
        }
        quarter(path, edges.fore(), edges.crown(), false);
        quarter(path, edges.crown(), edges.aft(), true);
        return opening.rearLeg().equals(edges.aft()) ? path : path.lineTo(opening.rearLeg());
    }

    /** A quarter of an ellipse that is upright at the edge of the opening and level at its crown. */
    private static void quarter(PathBuilder path, Point from, Point to, boolean falling) {
        double across = QUARTER * (to.x() - from.x());
        double up = QUARTER * (to.z() - from.z());
        if (falling) {
            path.curveTo(new Point(from.x() + across, from.z()), new Point(to.x(), to.z() - up), to);
        } else {
            path.curveTo(new Point(from.x(), from.z() + up), new Point(to.x() - across, to.z()), to);
        }
    }

    private static PathBuilder circle(Opening opening) {
        DrawnTyre tyre = opening.tyre();
        Point frontStart = onCircle(opening, opening.frontLeg(), -1);
        Point rearEnd = onCircle(opening, opening.rearLeg(), 1);
        PathBuilder path = new PathBuilder().moveTo(opening.frontLeg());
        if (!frontStart.equals(opening.frontLeg())) {
            path.lineTo(frontStart);
        }
        path.arcTo(opening.radius(), false, true, new Point(tyre.x(), tyre.centreHeight() + opening.radius()));
        path.arcTo(opening.radius(), false, true, rearEnd);
        if (!rearEnd.equals(opening.rearLeg())) {
            path.lineTo(opening.rearLeg());
        }
        return path;
    }

    private static Point onCircle(Opening opening, Point leg, int side) {
        boolean above = leg.z() > opening.tyre().centreHeight();
        return above
                ? leg
                : new Point(
                        opening.tyre().x() + side * opening.radius(),
                        opening.tyre().centreHeight());
    }

    private void sill(Opening ahead, Opening behind, @Nullable Point rockerFront, @Nullable Point rockerRear) {
        Point from = ahead.rearLeg();
        Point to = behind.frontLeg();
        PathBuilder path = new PathBuilder().moveTo(from);
        if (rockerFront != null && rockerFront.x() > from.x()) {
            path.lineTo(rockerFront);
        }
        if (rockerRear != null && rockerRear.x() < to.x()) {
            path.lineTo(rockerRear);
        }
        path.lineTo(to);
        LayerId layer = marking.marked(Part.ROCKER) ? LayerId.MARKS : LayerId.BODY;
        drawing.stroke(layer, marking.pen("tape", Part.ROCKER), path);
    }

    private void valances(Opening ahead, Opening behind, Point nose, Point tail) {
        boolean noseKnown = vehicle.find(Reading.FRONT_OVERHANG) != null || silhouette.outlined();
        boolean tailKnown = vehicle.find(Reading.REAR_OVERHANG) != null || silhouette.outlined();
        String pen = silhouette.outlined() ? "tape" : "drawn-in";
        if (noseKnown && nose.x() < ahead.frontLeg().x()) {
            drawing.stroke(LayerId.BODY, pen, new PathBuilder().moveTo(nose).lineTo(ahead.frontLeg()));
        }
        if (tailKnown && tail.x() > behind.rearLeg().x()) {
            drawing.stroke(
                    LayerId.BODY,
                    pen,
                    new PathBuilder().moveTo(behind.rearLeg()).lineTo(tail));
        }
    }

    /** The rigid underbody as recorded. */
    void underbody() {
        List<Point> points = vehicle.points(Polyline.UNDERBODY);
        if (points.size() < 2) {
            return;
        }
        PathBuilder path = new PathBuilder();
        List<Point> thinned = Thinning.of(points, 2, 120);
        path.moveTo(thinned.get(0));
        thinned.subList(1, thinned.size()).forEach(path::lineTo);
        drawing.stroke(LayerId.DETAIL, "underbody", path);
    }
}
