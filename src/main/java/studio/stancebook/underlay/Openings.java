package studio.stancebook.underlay;

import java.util.List;
import java.util.Optional;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.paper.Anchor;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.underlay.Canvas.LineStyle;

/** Draws what leans or opens: the windscreen and its aim, the shut lines of the doors, the planes of approach and departure. */
final class Openings {

    private final Framework framework;
    private final Layout layout;
    private final Canvas canvas;
    private final double d;
    private final double em;

    Openings(Framework framework, Layout layout, Canvas canvas) {
        this.framework = framework;
        this.layout = layout;
        this.canvas = canvas;
        this.d = framework.diameter();
        this.em = layout.em();
    }

    void draw() {
        screen();
        door(Framework.FRONT_DOOR, "front door", Anchor.START);
        door(Framework.REAR_DOOR, "rear door", Anchor.END);
        plane(Framework.APPROACH, "approach", framework.front(), -1, framework.foremost());
        plane(Framework.DEPARTURE, "departure", framework.rear(), 1, framework.rearmost());
    }

    /** The windscreen line from its aim at the front wheel up to the roof. */
    private void screen() {
        Optional<Double> aim = framework.place(Framework.AIM);
        Optional<Proportion> angle = framework.find(Framework.SCREEN_ANGLE);
        framework.place(Framework.DASH).ifPresent(this::cowlMark);
        if (aim.isEmpty()
                || angle.isEmpty()
                || angle.get().value() < 5
                || angle.get().value() > 85) {
            return;
        }
        double top = framework.place(Framework.HEIGHT).orElse(2 * d);
        double slope = Math.tan(Math.toRadians(angle.get().value()));
        double topX = (top - aim.get()) / slope;
        double cowlX = framework.place(Framework.DASH).orElse(0.0);
        double cowlZ = aim.get() + Math.max(0, cowlX) * slope;
        fan(aim.get(), top);
        canvas.line(LineStyle.AIM, 0, aim.get(), Math.max(0, cowlX), cowlZ);
        canvas.line(LineStyle.LINE, Math.max(0, cowlX), cowlZ, topX, top);
        double tick = 0.06 * d;
        canvas.line(LineStyle.LINE, -tick, aim.get(), tick, aim.get());
        aimZone(aim.get());
        String leaning = "windscreen "
                + NumberText.fixed(
                        LeaningAngles.value(Framework.SCREEN_ANGLE, angle.get().value()), 1) + "\u00b0 "
                + LeaningAngles.words(Framework.SCREEN_ANGLE, "from the horizontal");
        String aimed = "aims "
                + framework
                        .find(Framework.AIM)
                        .map(p -> NumberText.shown(p.value(), 2))
                        .orElse("")
                + " wheels over the centre";
        double x = layout.x(topX) + em;
        canvas.words(leaning, x, layout.y(top) + 2.2 * em, Anchor.START, false);
        canvas.words(aimed, x, layout.y(top) + 3.6 * em, Anchor.START, false);
    }

    /** What the band of the angle allows, turned about the aim. */
    private void fan(double aim, double top) {
        Interval angles = framework.zone(Framework.SCREEN_ANGLE);
        if (angles == null || !Double.isFinite(angles.width()) || angles.lower() < 5 || angles.upper() > 85) {
            return;
        }
        double flat = (top - aim) / Math.tan(Math.toRadians(angles.lower()));
        double steep = (top - aim) / Math.tan(Math.toRadians(angles.upper()));
        canvas.zone(List.of(new double[] {0, aim}, new double[] {steep, top}, new double[] {flat, top}));
    }

    private void aimZone(double aim) {
        Interval zone = Construction.finite(framework.zone(Framework.AIM));
        if (zone != null) {
            canvas.zone(-0.04 * d, zone.lower(), 0.04 * d, zone.upper());
        }
    }

    /** Where the cowl may stand, at the height of the top of the tyre and above. */
    private void cowlMark(double x) {
        double from = 1.15 * d;
        double to = 1.65 * d;
        Interval zone = Construction.finite(framework.zone(Framework.DASH));
        if (zone != null) {
            canvas.zone(zone.lower(), from, zone.upper(), to);
            canvas.line(LineStyle.EDGE, zone.lower(), from, zone.lower(), to);
            canvas.line(LineStyle.EDGE, zone.upper(), from, zone.upper(), to);
        }
        canvas.line(LineStyle.LINE, x, from, x, to);
        String text = "cowl " + ShownUnits.label(x, 0).replace('-', '\u2212');
        canvas.words(text, layout.x(x) - 0.6 * em, layout.y(to) + 0.8 * em, Anchor.END, false);
    }

    /** A shut line from the rocker to the belt, with the limits of its place at the rocker. */
    private void door(String measure, String name, Anchor anchor) {
        framework.place(measure).ifPresent(x -> {
            double foot = framework.place(Framework.ROCKER).orElse(d / 2);
            double head = foot + 0.95 * d;
            Interval zone = Construction.finite(framework.zone(measure));
            if (zone != null) {
                canvas.zone(zone.lower(), foot, zone.upper(), foot + 0.35 * d);
            }
            canvas.line(LineStyle.FINE, x, foot, x, head);
            double side = anchor == Anchor.START ? 0.6 * em : -0.6 * em;
            canvas.words(
                    name + " " + ShownUnits.label(x, 0), layout.x(x) + side, layout.y(head) + 0.8 * em, anchor, false);
        });
    }

    /** The plane that touches a tyre from below, out to the end of the sheet. */
    private void plane(String measure, String name, Wheel wheel, int side, double end) {
        Interval zone = framework.zone(measure);
        if (zone != null && Double.isFinite(zone.width()) && zone.lower() >= 1 && zone.upper() <= 80) {
            double[] low = outer(wheel, side, zone.lower(), end);
            double[] high = outer(wheel, side, zone.upper(), end);
            canvas.zone(List.of(touch(wheel, side, zone.lower()), low, high, touch(wheel, side, zone.upper())));
        } else if (zone != null && Double.isFinite(zone.lower()) && zone.lower() >= 1 && zone.lower() <= 80) {
            ray(LineStyle.EDGE, touch(wheel, side, zone.lower()), outer(wheel, side, zone.lower(), end));
        }
        framework.find(measure).filter(p -> p.value() >= 1 && p.value() <= 80).ifPresent(angle -> {
            double[] far = outer(wheel, side, angle.value(), end);
            ray(LineStyle.LINE, touch(wheel, side, angle.value()), far);
            Anchor anchor = side < 0 ? Anchor.START : Anchor.END;
            String text = name + " " + NumberText.fixed(angle.value(), 1) + "\u00b0";
            double y = layout.groundY() - 0.5 * em;
            canvas.words(text, layout.x(end), y, anchor, false);
        });
    }

    private void ray(LineStyle style, double[] from, double[] to) {
        canvas.line(style, from[0], from[1], to[0], to[1]);
    }

    private static double[] touch(Wheel wheel, int side, double deg) {
        double angle = Math.toRadians(deg);
        double r = wheel.centreHeight();
        return new double[] {wheel.x() + side * r * Math.sin(angle), r - r * Math.cos(angle)};
    }

    /** Where the plane meets the end of the sheet, or the height of one tyre above the ground before that. */
    private double[] outer(Wheel wheel, int side, double deg, double end) {
        double[] touch = touch(wheel, side, deg);
        double slope = Math.tan(Math.toRadians(deg));
        double run = Math.min(Math.abs(end - touch[0]), (1.3 * d - touch[1]) / slope);
        return new double[] {touch[0] + side * run, touch[1] + run * slope};
    }
}
