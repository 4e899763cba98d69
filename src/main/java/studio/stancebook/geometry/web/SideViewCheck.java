package studio.stancebook.geometry.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;
import studio.stancebook.geometry.TyreArc;
import studio.stancebook.geometry.UnderbodyAngles;
import studio.stancebook.geometry.web.SideViewJson.WheelJson;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Malformed;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;

/** Checks a side view that was sent, field by field, and collects what is wrong with it. */
final class SideViewCheck {

    static final int MOST_POINTS = 5_000;
    private static final int MOST_ERRORS = 20;
    private static final Interval HEIGHTS = new Interval(0, 1e6);
    private static final Interval PLACES = new Interval(-1e6, 1e6);

    private final List<FieldError> missing = new ArrayList<>();
    private final List<FieldError> impossible = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    /**
     * @throws Malformed if something is missing
     * @throws Impossible if a number is outside its range
     */
    AnglesJson answer(SideViewJson view) {
        double wheelbase = wheelbase(view.wheelbase());
        TyreArc front = tyre("front", 0, view.front());
        TyreArc rear = tyre("rear", wheelbase, view.rear());
        List<Point> underbody = underbody(view.underbody());
        refuseWhatIsWrong();
        return AnglesJson.of(UnderbodyAngles.of(wheelbase, front, rear, underbody), notes);
    }

    private double wheelbase(@Nullable Double sent) {
        double wheelbase = number("wheelbase", sent, HEIGHTS);
        if (sent != null && sent == 0) {
            impossible.add(new FieldError("wheelbase", "0 is not accepted, above 0 is."));
        }
        return wheelbase;
    }

    private TyreArc tyre(String field, double centreX, @Nullable WheelJson wheel) {
        if (wheel == null) {
            missing.add(new FieldError(field, "It is missing; centreHeight and radius are needed, in mm."));
            return TyreArc.onGround(centreX, 0);
        }
        double centreHeight = number(field + ".centreHeight", wheel.centreHeight(), HEIGHTS);
        double radius = number(field + ".radius", wheel.radius(), HEIGHTS);
        if (radius > centreHeight) {
            notes.add("The " + field + " tyre is larger than the height of its centre, as an unloaded one is;"
                    + " the arc of the static loaded radius, " + NumberText.plain(centreHeight, 3)
                    + " mm, was used instead.");
        }
        return new TyreArc(centreX, centreHeight, Math.min(radius, centreHeight));
    }

    private List<Point> underbody(@Nullable List<@Nullable List<@Nullable Double>> sent) {
        if (sent == null || sent.isEmpty() || sent.size() > MOST_POINTS) {
            String message = "1 to " + MOST_POINTS + " points [x, z] are accepted; got "
                    + (sent == null ? "none" : sent.size()) + ".";
            (sent == null ? missing : impossible).add(new FieldError("underbody", message));
            return List.of();
        }
        List<Point> points = new ArrayList<>(sent.size());
        for (int i = 0; i < sent.size() && missing.size() + impossible.size() < MOST_ERRORS; i++) {
            points.add(point("underbody[" + i + "]", sent.get(i)));
        }
        return points;
    }

    private Point point(String field, @Nullable List<@Nullable Double> pair) {
        if (pair == null || pair.size() != 2) {
            impossible.add(new FieldError(
                    field, "A point is two numbers [x, z] in mm; got " + (pair == null ? "null" : pair.size()) + "."));
            return new Point(0, 0);
        }
        return new Point(number(field + "[0]", pair.get(0), PLACES), number(field + "[1]", pair.get(1), HEIGHTS));
    }

    private double number(String field, @Nullable Double sent, Interval accepted) {
        if (sent == null) {
            missing.add(new FieldError(field, "It is missing; a number is needed, in mm."));
            return 0;
        }
        if (!accepted.contains(sent)) {
            impossible.add(new FieldError(
                    field,
                    sent + " is not accepted, " + NumberText.plain(accepted.lower(), 0) + " to "
                            + NumberText.plain(accepted.upper(), 0) + " is."));
            return 0;
        }
        return sent;
    }

    private void refuseWhatIsWrong() {
        if (!missing.isEmpty()) {
            throw new Malformed(summary(missing), missing);
        }
        if (!impossible.isEmpty()) {
            throw new Impossible(summary(impossible), impossible);
        }
    }

    private static String summary(List<FieldError> errors) {
        FieldError first = errors.get(0);
        String rest = errors.size() == 1 ? "" : " And " + (errors.size() - 1) + " more.";
        return first.field() + ": " + first.message() + rest;
    }
}
