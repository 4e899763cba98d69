package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.WHEEL_DIAMETER;
import static studio.stancebook.measure.MeasureGroup.*;
import static studio.stancebook.measure.MeasureUnit.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.Measure.MeasureText;

/** Collects definitions of measures in the order in which they are shown. */
abstract class MeasureList {

    private final List<Measure> all = new ArrayList<>();

    final List<Measure> all() {
        return List.copyOf(all);
    }

    final void inWheels(String key, String name, String definition, String more, Reading length) {
        ratio(new MeasureText(key, name, WHEELS, RATIO, 2, definition, more), length, WHEEL_DIAMETER);
    }

    final void share(String key, String name, String definition, String more, Reading part, Reading whole) {
        ratio(shareText(key, name, definition, more), part, whole);
    }

    static MeasureText shareText(String key, String name, String definition, String more) {
        return new MeasureText(key, name, SHARES, RATIO, 3, definition, more);
    }

    final void angle(String key, String name, String definition, String more, UnderbodyAngle angle) {
        add(
                new MeasureText(key, name, UNDERBODY, DEG, 1, definition, more),
                List.of(Need.of(angle)),
                subject -> Underside.angle(subject, angle));
    }

    final void ratio(MeasureText text, Reading above, Reading below) {
        add(text, s -> Formula.Result.of(s.get(above).over(s.get(below))), above, below);
    }

    final void add(MeasureText text, Formula formula, Reading... needs) {
        add(text, Arrays.stream(needs).map(Need::of).toList(), formula);
    }

    final void add(MeasureText text, List<Need> needs, Formula formula) {
        all.add(new Measure(text, needs, formula));
    }
}
