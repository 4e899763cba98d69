package studio.stancebook.drawing.sideview;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.geometry.Point;

/**
 * Draws what bands allow as zones with edges and names. A limit that is open ends at the edge of the picture. The rear
 * overhang counts from the median's rear wheel; the aim of the screen is seen from the median's cowl.
 */
final class ZoneRenderer {

    private static final double WHEEL = ClassDrawing.WHEEL;
    private static final double CENTRE = WHEEL / 2;

    private final Extent extent;
    private final DrawingBuilder drawing;
    private final @Nullable Double wheelbase;
    private final @Nullable Point cowl;

    ZoneRenderer(Extent extent, DrawingBuilder drawing, @Nullable Double wheelbase, @Nullable Point cowl) {
        this.extent = extent;
        this.drawing = drawing;
        this.wheelbase = wheelbase;
        this.cowl = cowl;
    }

    void draw(List<ClassZone> zones) {
        zones.forEach(this::draw);
    }

    private void draw(ClassZone zone) {
        double from = zone.limits().lower() * WHEEL;
        double to = zone.limits().upper() * WHEEL;
        switch (zone.kind()) {
            case HEIGHT -> height(from, to);
            case ROCKER -> rocker(from, to);
            case SCREEN_AIM -> aim(from, to);
            case FRONT_OVERHANG -> upright(-to, -from, "start", "front-overhang");
            case REAR_OVERHANG -> {
                if (wheelbase != null) {
                    upright(wheelbase + from, wheelbase + to, "end", "rear-overhang");
                }
            }
        }
    }

    private void height(double from, double to) {
        level(extent.left(), extent.right(), from, to);
        words(extent.right() - 0.4 * extent.em(), z(to) + 0.3 * extent.em(), "end", "height");
    }

    private void rocker(double from, double to) {
        double end = wheelbase == null ? 4 * WHEEL : wheelbase;
        double left = 0.62 * WHEEL;
        double right = end - 0.62 * WHEEL;
        level(left, right, CENTRE + from, CENTRE + to);
        words((left + right) / 2, z(CENTRE + from) - extent.em(), "middle", "rocker");
    }

    /** The rays from the cowl to the two limits at the front axle; a bar at the axle where no cowl is known. */
    private void aim(double from, double to) {
        double low = z(CENTRE + from);
        double high = z(CENTRE + to);
        PathBuilder zone = new PathBuilder();
        if (cowl != null && cowl.x() > 0) {
            zone.moveTo(cowl).lineTo(0, low).lineTo(0, high).close();
            words(cowl.x() + 0.06 * WHEEL, 0.76 * cowl.z(), "start", "screen-aim");
        } else {
            zone.moveTo(-0.06 * WHEEL, low)
                    .lineTo(0.06 * WHEEL, low)
                    .lineTo(0.06 * WHEEL, high)
                    .lineTo(-0.06 * WHEEL, high)
                    .close();
            words(0.1 * WHEEL, high, "start", "screen-aim");
        }
        drawing.stroke(LayerId.WEDGES, "zone", zone);
    }

    private void level(double left, double right, double from, double to) {
        double low = z(from);
        double high = z(to);
        zone(left, right, low, high);
        edge(from, low, new Point(left, low), new Point(right, low));
        edge(to, high, new Point(left, high), new Point(right, high));
    }

    /** Where the nose or the tail may end, from the ground to one and a half tyres above it. */
    private void upright(double from, double to, String anchor, String name) {
        double left = x(from);
        double right = x(to);
        double top = 1.5 * WHEEL;
        zone(left, right, 0, top);
        edge(from, left, new Point(left, 0), new Point(left, top));
        edge(to, right, new Point(right, 0), new Point(right, top));
        double edge = anchor.equals("start") ? extent.left() : extent.right();
        double margin = 0.4 * extent.em() * (anchor.equals("start") ? 1 : -1);
        words(edge + margin, -1.25 * extent.em(), anchor, name);
    }

    private void zone(double left, double right, double low, double high) {
        if (left < right && low < high) {
            drawing.stroke(
                    LayerId.WEDGES,
                    "zone",
                    new PathBuilder()
                            .moveTo(left, low)
                            .lineTo(right, low)
                            .lineTo(right, high)
                            .lineTo(left, high)
                            .close());
        }
    }

    /** No edge where the band is open. */
    private void edge(double limit, double shown, Point from, Point to) {
        if (limit == shown) {
            drawing.line(LayerId.WEDGES, "zone-edge", from, to);
        }
    }

    private double x(double at) {
        return Math.max(extent.left(), Math.min(extent.right(), at));
    }

    private double z(double at) {
        return Math.max(0, Math.min(extent.top(), at));
    }

    private void words(double x, double z, String anchor, String name) {
        drawing.words(new TextLine("note", x, -z, anchor, Phrases.of("drawing.zone." + name)));
    }
}
