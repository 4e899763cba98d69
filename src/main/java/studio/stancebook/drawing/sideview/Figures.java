package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureUnit;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/** The numbers of a drawing as text: for its labels, its description and its companion table. */
final class Figures {

    private final Subject subject;
    private final Marking marking;
    private final boolean unscaled;

    Figures(DimensionSet recorded, Marking marking) {
        this.subject = new Subject(recorded);
        this.marking = marking;
        this.unscaled = recorded.scale() == Scale.UNSCALED;
    }

    private Readings readings() {
        return subject.readings();
    }

    /** A length as a label of the drawing: a bare number is mm, as on any drawing; null as with {@link #number}. */
    @Nullable
    String label(Reading reading) {
        return length(reading, mm -> ShownUnits.label(mm, 0));
    }

    /** A length, in whole mm or hundredths of an inch; null when there is none or it has no scale. */
    private @Nullable String number(Reading reading) {
        return length(reading, mm -> ShownUnits.plain(mm, 0));
    }

    private @Nullable String length(Reading reading, DoubleFunction<String> written) {
        return unscaled
                ? null
                : readings()
                        .find(reading)
                        .map(estimate -> Lettering.read(written.apply(estimate.value())))
                        .orElse(null);
    }

    /** A length in tyre diameters, two decimals; null when it or the tyres are not known. */
    @Nullable
    String wheels(Reading reading) {
        Double d = readings().find(Reading.WHEEL_DIAMETER).map(Estimate::value).orElse(null);
        return d == null
                ? null
                : readings()
                        .find(reading)
                        .map(estimate -> Lettering.read(NumberText.fixed(estimate.value() / d, 2)))
                        .orElse(null);
    }

    /** A measure with its usual decimals, without unit; null when it cannot be measured. */
    @Nullable
    String measure(String key) {
        Double value = value(key);
        return value == null
                ? null
                : Lettering.read(NumberText.fixed(
                        value, MeasureRegistry.builtIn().get(key).decimals()));
    }

    /** As {@link #measure}, with a sign. */
    @Nullable
    String signed(String key) {
        Double value = value(key);
        return value == null
                ? null
                : Lettering.read(NumberText.signed(
                        value, MeasureRegistry.builtIn().get(key).decimals()));
    }

    private @Nullable Double value(String key) {
        return MeasureRegistry.builtIn().get(key).of(subject) instanceof Measured measured
                ? LeaningAngles.value(key, measured.value())
                : null;
    }

    /** Every number that the drawing shows. */
    List<Figure> table() {
        List<Figure> rows = new ArrayList<>();
        tyres(rows);
        length(rows, Dimension.WHEELBASE, Reading.WHEELBASE, Part.WHEELBASE);
        ratio(rows, "wheels-spanned", Part.WHEELBASE);
        length(rows, Dimension.OVERALL_LENGTH, Reading.OVERALL_LENGTH, Part.LENGTH);
        length(rows, Dimension.FRONT_OVERHANG, Reading.FRONT_OVERHANG, Part.FRONT_OVERHANG);
        length(rows, Dimension.REAR_OVERHANG, Reading.REAR_OVERHANG, Part.REAR_OVERHANG);
        length(rows, Dimension.OVERALL_HEIGHT, Reading.OVERALL_HEIGHT, Part.HEIGHT);
        length(rows, Dimension.GROUND_CLEARANCE, Reading.GROUND_CLEARANCE, Part.CLEARANCE);
        length(rows, Dimension.ROCKER_HEIGHT, Reading.ROCKER_HEIGHT, Part.ROCKER);
        ratio(rows, "rocker-offset-in-wheels", Part.ROCKER);
        length(rows, Dimension.COWL_HEIGHT, Reading.COWL_Z, Part.SCREEN);
        length(rows, Dimension.DASH_TO_AXLE, Reading.COWL_X, Part.DASH);
        ratio(rows, "screen-angle", Part.SCREEN);
        ratio(rows, "screen-aim-in-wheels", Part.SCREEN);
        angle(rows, Dimension.APPROACH_ANGLE, "approach-angle", Part.APPROACH);
        angle(rows, Dimension.DEPARTURE_ANGLE, "departure-angle", Part.DEPARTURE);
        angle(rows, Dimension.RAMP_ANGLE, "ramp-angle", Part.RAMP);
        return rows;
    }

    private void tyres(List<Figure> rows) {
        for (Axle axle : Axle.values()) {
            DimensionSet set = subject.set();
            Reading reading = axle == Axle.FRONT ? Reading.FRONT_TYRE_DIAMETER : Reading.REAR_TYRE_DIAMETER;
            String size = set.tyre(axle).map(tyre -> ", " + tyre.text()).orElse("");
            String length = number(reading);
            if (length != null) {
                rows.add(new Figure(
                        "", axle.tyreDiameter().label() + size, length, ShownUnits.symbol(), "", mark(Part.TYRES)));
            }
        }
    }

    private void length(List<Figure> rows, Dimension dimension, Reading reading, Part part) {
        String length = number(reading);
        String wheels = wheels(reading);
        if (length != null || wheels != null) {
            rows.add(new Figure(
                    dimension.code(),
                    dimension.label(),
                    length == null ? "" : length,
                    length == null ? "" : ShownUnits.symbol(),
                    wheels == null ? "" : wheels,
                    mark(part)));
        }
    }

    private void ratio(List<Figure> rows, String key, Part part) {
        Measure measure = MeasureRegistry.builtIn().get(key);
        boolean signed = key.equals("rocker-offset-in-wheels") || key.equals("screen-aim-in-wheels");
        String text = signed ? signed(key) : measure(key);
        if (text != null) {
            boolean ratio = measure.unit() == MeasureUnit.RATIO;
            String unit = ratio ? "" : measure.unit().symbol();
            rows.add(new Figure(
                    "",
                    LeaningAngles.words(key, measure.name()),
                    ratio ? "" : text,
                    unit,
                    ratio ? text : "",
                    mark(part)));
        }
    }

    private void angle(List<Figure> rows, Dimension dimension, String key, Part part) {
        String text = measure(key);
        if (text != null) {
            rows.add(new Figure(dimension.code(), dimension.label(), text, "°", "", mark(part)));
        }
    }

    private String mark(Part part) {
        if (marking.outside().contains(part)) {
            return "outside";
        }
        return marking.tooClose().contains(part) ? "too-close" : "";
    }
}
