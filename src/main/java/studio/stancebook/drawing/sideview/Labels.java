package studio.stancebook.drawing.sideview;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Reading;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Overlay;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.geometry.Point;
import studio.stancebook.measure.Measure;

/** The words in the picture: counts, angles, the screen's aim and what is said of marked parts. */
final class Labels {

    private final Vehicle vehicle;
    private final Remarks remarks;
    private final Marking marking;
    private final DrawingBuilder drawing;
    private final Figures figures;
    private final Lettering lettering;
    private final Extent extent;
    private final double em;
    private final List<Point> tape;

    Labels(
            Vehicle vehicle,
            Remarks remarks,
            Marking marking,
            DrawingBuilder drawing,
            Figures figures,
            Lettering lettering,
            Extent extent,
            List<Point> tape) {
        this.vehicle = vehicle;
        this.remarks = remarks;
        this.marking = marking;
        this.drawing = drawing;
        this.figures = figures;
        this.lettering = lettering;
        this.extent = extent;
        this.em = extent.em();
        this.tape = tape;
    }

    private boolean put(String cls, double x, double z, String anchor, String text) {
        return put(null, cls, x, z, anchor, text);
    }

    /** @param overlay the layer that the words come and go with; null for words that stay */
    private boolean put(@Nullable Overlay overlay, String cls, double x, double z, String anchor, String text) {
        TextLine words = new TextLine(cls, x, -z, anchor, text);
        Lettering.Box box = lettering.boxOf(words);
        boolean inside = box.left() >= extent.left()
                && box.right() <= extent.right()
                && box.top() >= -extent.top()
                && box.bottom() <= -extent.bottom();
        boolean placed = inside && lettering.take(words);
        if (placed) {
            add(overlay, words);
        }
        return placed;
    }

    private void add(@Nullable Overlay overlay, TextLine words) {
        if (overlay == null) {
            drawing.words(words);
        } else {
            drawing.words(overlay, words);
        }
    }

    /** The number of each circle under the ground line, and what they add up to. */
    void wheelCount(double countZ, double sumZ) {
        Double d = vehicle.wheelDiameter();
        if (d == null) {
            return;
        }
        List<Double> steps = WheelRulers.steps(vehicle.wheelbase(), d);
        for (int i = 0; i < steps.size(); i++) {
            put(Overlay.RULERS, "count", steps.get(i), countZ, "middle", Integer.toString(i + 1));
        }
        String spanned = figures.measure("wheels-spanned");
        String between = figures.measure("wheelbase-in-wheels");
        if (spanned != null && between != null) {
            String cls = remarks.pen("strong", "wheels-spanned", "wheelbase-in-wheels");
            double middle = vehicle.wheelbase() / 2;
            boolean full =
                    put(Overlay.RULERS, cls, middle, sumZ, "middle", Phrases.of("drawing.spanned", spanned, between));
            if (!full) {
                put(Overlay.RULERS, cls, middle, sumZ, "middle", Phrases.of("drawing.spanned.short", spanned));
            }
        }
    }

    /** The number of each circle of the height ruler that is all but whole, in its middle. */
    void heightCount() {
        Double d = vehicle.wheelDiameter();
        Double height = vehicle.find(Reading.OVERALL_HEIGHT);
        if (d != null && height != null) {
            for (int i = 0; i < Math.min(20, (int) Math.floor(height / d + 0.25)); i++) {
                put(
                        Overlay.RULERS,
                        "count",
                        extent.rulerX(),
                        (i + 0.5) * d - 0.35 * em,
                        "middle",
                        Integer.toString(i + 1));
            }
        }
    }

    /** What the height line says, at its right end. */
    void height(double z, double x, boolean narrow) {
        String mm = figures.label(Reading.OVERALL_HEIGHT);
        String wheels = figures.wheels(Reading.OVERALL_HEIGHT);
        String text = mm != null && wheels != null
                ? Phrases.of("drawing.height", mm, wheels)
                : mm != null
                        ? Phrases.of("drawing.height.mm", mm)
                        : wheels != null ? Phrases.of("drawing.height.wheels", wheels) : "";
        if (!text.isEmpty()) {
            String said = narrow ? text : text + remarks.after(Part.HEIGHT);
            put(marking.pen("note", Part.HEIGHT), x, z + 0.45 * em, narrow ? "middle" : "end", said);
        }
    }

    /** The three angles of the underbody. */
    void angles() {
        double left = extent.left() + 0.4 * em;
        angle("approach", Part.APPROACH, left, "start");
        double behind = vehicle.wheelbase() + 0.62 * vehicle.nominalDiameter();
        angle("departure", Part.DEPARTURE, Math.max(vehicle.rearEnd() - 3.2 * em, behind), "start");
        angle("ramp", Part.RAMP, vehicle.wheelbase() * 0.43, "middle");
    }

    /** One angle above the ground line, with its verdict where that fits. */
    private void angle(String name, Part part, double x, String anchor) {
        String value = figures.measure(name + "-angle");
        if (value == null) {
            return;
        }
        String cls = marking.pen("note", part);
        String text = Phrases.of("drawing." + name, value);
        for (String said : List.of(text + remarks.after(part), text)) {
            for (double z : new double[] {0.5 * em, 1.9 * em}) {
                if (put(Overlay.WEDGES, cls, x, z, anchor, said)
                        || put(Overlay.WEDGES, cls, extent.right() - 0.4 * em, z, "end", said)) {
                    return;
                }
            }
        }
    }

    /** The windscreen line carried down to the vertical through the front wheel centre. */
    void screenAim(boolean worded) {
        Point cowl = vehicle.landmark(Landmark.COWL).orElse(null);
        Point top = vehicle.landmark(Landmark.SCREEN_TOP).orElse(null);
        if (cowl == null || top == null || top.x() <= cowl.x() || cowl.x() <= 0) {
            return;
        }
        double slope = (top.z() - cowl.z()) / (top.x() - cowl.x());
        Point aim = new Point(0, cowl.z() - slope * cowl.x());
        double past = Math.min(1.6 * em, Math.max(0, (aim.z() - extent.bottom()) / Math.max(slope, 0.1)));
        Point end = new Point(-past, aim.z() - slope * past);
        drawing.line(LayerId.MARKS, marking.pen("aim", Part.SCREEN), cowl, end);
        drawing.disc(LayerId.MARKS, marking.pen("aim-point", Part.SCREEN), aim, 0.26 * em);
        String value = figures.signed("screen-aim-in-wheels");
        if (worded && value != null) {
            aimWords(cowl, aim, Phrases.of("drawing.screen-aim", value));
        }
    }

    /** Above the bonnet, the verdict in a line of its own so that neither reaches over the windscreen. */
    private void aimWords(Point cowl, Point aim, String text) {
        String verdict = remarks.verdict(Part.SCREEN);
        String cls = marking.pen("note", Part.SCREEN);
        double x = vehicle.frontEnd() - 1.5 * em;
        double z = Math.max(cowl.z(), 1.25 * vehicle.nominalDiameter()) + (verdict.isEmpty() ? 2.2 : 3.4) * em;
        if (!put(cls, x, z, "start", text)) {
            return;
        }
        boolean second = !verdict.isEmpty() && put(cls, x, z - 1.25 * em, "start", verdict);
        double foot = z - (second ? 1.75 : 0.5) * em;
        double from = Math.min(x + lettering.widthOf(text) * 0.5, -0.6 * em);
        drawing.line(
                LayerId.MARKS, marking.pen("leader", Part.SCREEN), new Point(from, foot), aimEdge(aim, from, foot));
    }

    /** The leader stops at the ring, not at its centre. */
    private Point aimEdge(Point aim, double x, double z) {
        return Vector.between(aim, new Point(x, z)).unit().times(0.3 * em).from(aim);
    }

    /** What is said of the other marked parts, each with a leader where it stands away. */
    void callouts() {
        for (Part part : Part.values()) {
            if (marking.marked(part) && part != Part.SCREEN) {
                anchor(part).ifPresent(at -> callout(part, at));
            }
        }
    }

    /** Clear of the tape where there is such a place, else across it. */
    private void callout(Part part, Point at) {
        Measure measure = remarks.measureOf(part);
        String value = measure == null ? null : figures.measure(measure.key());
        if (measure == null || value == null) {
            return;
        }
        String text = measure.name() + " " + value + remarks.after(part);
        String cls = marking.pen("note", part);
        if (!callout(part, at, cls, text, true)) {
            callout(part, at, cls, text, false);
        }
    }

    private boolean callout(Part part, Point at, String cls, String text, boolean clear) {
        boolean low = at.z() < vehicle.nominalDiameter();
        double[] rises = low ? new double[] {-1.5, -2.8, 1.2, 2.6} : new double[] {2.2, 3.6, -2.2, -3.6, 5};
        for (double rise : rises) {
            for (double shift : new double[] {0, -4, 4, -9, 9, -14, 14}) {
                Point place = new Point(at.x() + shift * em, at.z() + rise * em);
                boolean acceptable = place.z() > 0.4 * em && !(clear && overTape(place, text));
                if (acceptable && put(cls, place.x(), place.z(), "middle", text)) {
                    leader(part, at, place, rise);
                    return true;
                }
            }
        }
        return false;
    }

    private boolean overTape(Point place, String text) {
        Lettering.Box box = lettering.boxOf(new TextLine("", place.x(), -place.z(), "middle", text));
        return tape.stream()
                .anyMatch(point -> point.x() > box.left() - 0.4 * em
                        && point.x() < box.right() + 0.4 * em
                        && -point.z() > box.top()
                        && -point.z() < box.bottom());
    }

    private void leader(Part part, Point at, Point place, double rise) {
        double foot = rise > 0 ? place.z() - 0.35 * em : place.z() + 0.9 * em;
        if (Math.abs(foot - at.z()) > 0.5 * em) {
            drawing.line(LayerId.MARKS, marking.pen("leader", part), new Point(place.x(), foot), at);
        }
    }

    /** Where a part is pointed at; empty for those whose own label already turns red. */
    private Optional<Point> anchor(Part part) {
        double d = vehicle.nominalDiameter();
        return switch (part) {
            case ROCKER ->
                Optional.ofNullable(vehicle.find(Reading.ROCKER_HEIGHT))
                        .map(z -> new Point(vehicle.wheelbase() / 2, z));
            case FRONT_ARCH -> vehicle.landmark(Landmark.ARCH_FRONT_TOP);
            case REAR_ARCH -> vehicle.landmark(Landmark.ARCH_REAR_TOP);
            case BACKLIGHT -> middle(Landmark.BACKLIGHT_TOP, Landmark.BACKLIGHT_BASE);
            case DASH -> vehicle.landmark(Landmark.COWL);
            case FRONT_DOOR -> vehicle.landmark(Landmark.FRONT_DOOR_CUT);
            case REAR_DOOR -> vehicle.landmark(Landmark.REAR_DOOR_CUT);
            case TYRES -> Optional.of(new Point(0, d));
            case BELT -> middle(Landmark.BELT_FRONT, Landmark.BELT_REAR);
            case ROOF -> vehicle.landmark(Landmark.ROOF_APEX);
            case SEAT -> vehicle.landmark(Landmark.H_POINT);
            default -> Optional.empty();
        };
    }

    private Optional<Point> middle(Landmark first, Landmark second) {
        return vehicle.landmark(first)
                .flatMap(a -> vehicle.landmark(second).map(b -> new Point((a.x() + b.x()) / 2, (a.z() + b.z()) / 2)));
    }

    /** Says that the drawing has no scale. */
    void unscaled() {
        if (vehicle.unscaled()) {
            put("strong", extent.left() + 0.4 * em, extent.top() - 1.4 * em, "start", Phrases.of("drawing.unscaled"));
        }
    }

    /** The name of a ghost at the end of its line. */
    void ghost(String name, Point end) {
        String text = Lettering.shortened(name, 22);
        double x = Math.max(end.x(), vehicle.rearEnd()) + 1.2 * em;
        for (int row = 0; row < 12; row++) {
            double z = end.z() + (row % 2 == 0 ? 1 : -1) * (row + 1) / 2 * 1.25 * em;
            if (put(Overlay.GHOSTS, "ghost-word", x, z, "start", text)) {
                drawing.line(LayerId.GHOSTS, "ghost-leader", end, new Point(x - 0.25 * em, z + 0.3 * em));
                return;
            }
        }
    }
}
