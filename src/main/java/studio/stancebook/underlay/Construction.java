package studio.stancebook.underlay;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.LetterWidths;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.underlay.Canvas.LineStyle;

/** Draws the lines of a framework: ground, tyres, wheel ruler, heights, windscreen, doors, angles and their zones. */
final class Construction {

    private final Framework framework;
    private final Layout layout;
    private final Canvas canvas;
    private final double d;
    private final double em;

    Construction(Framework framework, Layout layout, Canvas canvas) {
        this.framework = framework;
        this.layout = layout;
        this.canvas = canvas;
        this.d = framework.diameter();
        this.em = layout.em();
    }

    void draw() {
        canvas.paperLine(LineStyle.GROUND, layout.left(), layout.groundY(), layout.right(), layout.groundY());
        wheels();
        ruler();
        levels();
        ends();
        new Openings(framework, layout, canvas).draw();
        dimensions();
    }

    private void wheels() {
        for (Wheel wheel : List.of(framework.front(), framework.rear())) {
            canvas.circle(LineStyle.TYRE, wheel.x(), wheel.centreHeight(), wheel.radius());
            if (wheel.rimRadius() != null) {
                canvas.circle(LineStyle.FINE, wheel.x(), wheel.centreHeight(), wheel.rimRadius());
            }
            double arm = 0.12 * d;
            double z = wheel.centreHeight();
            canvas.line(LineStyle.FINE, wheel.x() - arm, z, wheel.x() + arm, z);
            canvas.line(LineStyle.FINE, wheel.x(), z - arm, wheel.x(), z + arm);
        }
        double reach = 0.75 * d;
        canvas.line(
                LineStyle.GUIDE,
                -reach,
                framework.front().centreHeight(),
                framework.wheelbase() + reach,
                framework.rear().centreHeight());
        Interval zone = finite(framework.zone(Framework.WHEELBASE));
        if (zone != null) {
            double z = framework.rear().centreHeight();
            canvas.zone(zone.lower(), z - 0.07 * d, zone.upper(), z + 0.07 * d);
        }
    }

    /** Circles of D along the ground, and the number of each. */
    private void ruler() {
        int number = 1;
        for (double x = 0; x < framework.wheelbase() - 0.02 * d && number <= 20; x += d) {
            if (number > 1) {
                canvas.circle(LineStyle.RULER, x, d / 2, d / 2);
            }
            canvas.words(Integer.toString(number), layout.x(x), layout.groundY() + 1.3 * em, Anchor.MIDDLE, false);
            number++;
        }
        String spanned = NumberText.fixed(framework.wheelbase() / d + 1, 2) + " wheels spanned, both counted; "
                + NumberText.fixed(framework.wheelbase() / d, 2) + " centre to centre";
        double middle = layout.x(framework.wheelbase() / 2);
        double y = layout.groundY() + 2.8 * em;
        if (!canvas.words(spanned, middle, y, Anchor.MIDDLE, true)) {
            canvas.words(
                    NumberText.fixed(framework.wheelbase() / d + 1, 2) + " wheels", middle, y, Anchor.MIDDLE, true);
        }
    }

    /** Height, rocker and clearance, each with its zone. */
    private void levels() {
        double nose = framework.place(Framework.FRONT_OVERHANG).orElse(-d / 2);
        double tail = framework.place(Framework.REAR_OVERHANG).orElse(framework.wheelbase() + d / 2);
        double frontEdge = framework.front().radius() * 1.1;
        double rearEdge = framework.wheelbase() - framework.rear().radius() * 1.1;
        level(Framework.HEIGHT, "height", nose, tail, LineStyle.LINE, layout.x(tail), Anchor.END, 0.5);
        level(
                Framework.ROCKER,
                "rocker",
                frontEdge,
                rearEdge,
                LineStyle.LINE,
                layout.x(framework.wheelbase() / 2),
                Anchor.MIDDLE,
                0.5);
        level(
                Framework.CLEARANCE,
                "clearance",
                frontEdge,
                rearEdge,
                LineStyle.GUIDE,
                layout.x(framework.wheelbase() / 2),
                Anchor.MIDDLE,
                -1);
    }

    private void level(
            String measure,
            String name,
            double from,
            double to,
            LineStyle style,
            double at,
            Anchor anchor,
            double riseEm) {
        Interval zone = framework.zone(measure);
        if (zone != null) {
            if (Double.isFinite(zone.width())) {
                canvas.zone(from, zone.lower(), to, zone.upper());
            }
            edges(zone).forEach(z -> canvas.line(LineStyle.EDGE, from, z, to, z));
        }
        framework.place(measure).ifPresent(z -> {
            canvas.line(style, from, z, to, z);
            canvas.words(amount(measure, name, z), at, layout.y(z) - riseEm * em, anchor, false);
        });
    }

    /** Nose and tail, each with the limits of its overhang. */
    private void ends() {
        end(Framework.FRONT_OVERHANG);
        end(Framework.REAR_OVERHANG);
    }

    private void end(String measure) {
        double top = Math.min(1.35 * d, framework.highest());
        Interval zone = framework.zone(measure);
        if (zone != null) {
            if (Double.isFinite(zone.width())) {
                canvas.zone(zone.lower(), 0.2 * d, zone.upper(), top);
            }
            edges(zone).forEach(x -> canvas.line(LineStyle.EDGE, x, 0.2 * d, x, top));
        }
        framework.place(measure).ifPresent(x -> canvas.line(LineStyle.LINE, x, 0, x, top));
    }

    private static List<Double> edges(Interval zone) {
        return List.of(zone.lower(), zone.upper()).stream()
                .filter(Double::isFinite)
                .toList();
    }

    static @Nullable Interval finite(@Nullable Interval zone) {
        return zone == null || !Double.isFinite(zone.width()) ? null : zone;
    }

    private String amount(String measure, String name, double mm) {
        return name + " " + ShownUnits.label(mm, 0) + " \u00b7 "
                + framework
                        .find(measure)
                        .map(p -> NumberText.shown(p.value(), 2))
                        .orElse("")
                + " wheels";
    }

    /** Overhangs and wheelbase in one row, the overall length below it. */
    private void dimensions() {
        Optional<Double> nose = framework.place(Framework.FRONT_OVERHANG);
        Optional<Double> tail = framework.place(Framework.REAR_OVERHANG);
        double upper = layout.groundY() + 4.4 * em;
        double lower = layout.groundY() + 6.2 * em;
        nose.ifPresent(x -> dimension(x, 0, upper, "L104"));
        dimension(0, framework.wheelbase(), upper, "L101 wheelbase");
        tail.ifPresent(x -> dimension(framework.wheelbase(), x, upper, "L105"));
        if (nose.isPresent() && tail.isPresent()) {
            dimension(nose.get(), tail.get(), lower, "L103 overall length");
        }
    }

    private void dimension(double from, double to, double y, String name) {
        double x1 = layout.x(from);
        double x2 = layout.x(to);
        canvas.paperLine(LineStyle.FINE, x1, y, x2, y);
        for (double x : new double[] {x1, x2}) {
            canvas.paperLine(LineStyle.FINE, x, y - 0.6 * em, x, y + 0.6 * em);
            canvas.paperLine(LineStyle.SLASH, x - 0.35 * em, y + 0.35 * em, x + 0.35 * em, y - 0.35 * em);
        }
        String length = ShownUnits.label(to - from, 0);
        for (String text : List.of(name + " " + length, name.substring(0, 4) + " " + length, length)) {
            boolean fits = LetterWidths.em(text, false) * em < x2 - x1 - 2 * em;
            if (fits && canvas.words(text, (x1 + x2) / 2, y + 0.35 * em, Anchor.MIDDLE, false)) {
                return;
            }
        }
    }
}
