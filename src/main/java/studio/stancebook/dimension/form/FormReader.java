package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.form.DimensionForm.PREFIX;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.LengthText;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.dimension.Unit;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.quantity.NumberReading;

/** Reads the texts of a form into a dimension set, collecting everything that cannot be read. */
final class FormReader {

    private final DimensionForm form;
    private final String bareUnit;
    private final Map<String, Object> tree = new LinkedHashMap<>();
    private final Map<String, Object> uncertainties = new LinkedHashMap<>();
    private final Map<String, Object> origins = new LinkedHashMap<>();
    private final ErrorList errors = new ErrorList();

    FormReader(DimensionForm form) {
        this.form = form;
        this.bareUnit = FormSettings.lengths(form).symbol();
    }

    DimensionSet read(Origin origin) {
        texts();
        Arrays.stream(Dimension.values()).forEach(this::scalar);
        Arrays.stream(Landmark.values()).forEach(this::landmark);
        Arrays.stream(Polyline.values()).forEach(this::polyline);
        Arrays.stream(Axle.values()).forEach(axle -> doubt(axle.tyreKey(), Unit.MM));
        tree.put("uncertainties", uncertainties);
        tree.put("origins", origins);
        return build(origin);
    }

    /** The value of a dimension as kept; empty where the text is no number. */
    OptionalDouble value(Dimension dimension, String text) {
        Double value = number(dimension.key(), text, dimension.unit());
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(fromHorizontal(dimension, value));
    }

    /** A length as kept; empty where the text is no number. */
    OptionalDouble length(String text) {
        Double value = number("length", text, Unit.MM);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private DimensionSet build(Origin origin) {
        if (!form.text(PREFIX + Dimension.WHEELBASE.key()).isEmpty() && !tree.containsKey(Dimension.WHEELBASE.key())) {
            standInForTheWheelbase();
        }
        try {
            DimensionSet set = DimensionJson.read(tree, origin);
            if (errors.isEmpty()) {
                return set;
            }
            add(RangeChecks.problemsOf(set).stream()
                    .map(error -> new FieldError(PREFIX + error.field(), error.message())));
        } catch (ImpossibleDimensions impossible) {
            add(impossible.errors().stream());
        }
        throw new ImpossibleDimensions(errors);
    }

    /** The others can be checked without it, but for landmarks, which are plausible by the wheelbase. */
    private void standInForTheWheelbase() {
        tree.put(Dimension.WHEELBASE.key(), Dimension.WHEELBASE.range().lower());
        Arrays.stream(Landmark.values()).map(Landmark::key).forEach(tree::remove);
    }

    /** One value that cannot be read hides nothing that is wrong with the others. */
    private void add(Stream<FieldError> found) {
        found.filter(this::isNew).toList().forEach(errors::add);
    }

    /** What could not be read here must not be called missing as well, nor one tyre wrong twice. */
    private boolean isNew(FieldError error) {
        boolean sameTyre = error.field().equals(PREFIX + Axle.REAR.tyreKey()) && RearTyre.sameAsFront(form);
        return !sameTyre
                && errors.listed().stream().noneMatch(known -> known.field().equals(error.field()));
    }

    private void texts() {
        for (String name : List.of("scale", "edition", "frontTyre", "rearTyre")) {
            String text = form.text(PREFIX + name);
            if (!text.isEmpty()) {
                tree.put(name, text);
            }
        }
        Object front = tree.get(Axle.FRONT.tyreKey());
        if (front != null && RearTyre.sameAsFront(form)) {
            tree.put(Axle.REAR.tyreKey(), front);
        }
    }

    private void scalar(Dimension dimension) {
        Double value = number(dimension.key(), form.text(PREFIX + dimension.key()), dimension.unit());
        if (value != null) {
            tree.put(dimension.key(), fromHorizontal(dimension, value));
        }
        doubt(dimension.key(), dimension.unit());
    }

    private double fromHorizontal(Dimension dimension, double value) {
        return LeaningAngles.reference(dimension.key(), FormSettings.angles(form))
                .of(value);
    }

    private void landmark(Landmark landmark) {
        String key = landmark.key();
        String x = form.text(PREFIX + key + ".x");
        String z = form.text(PREFIX + key + ".z");
        if (x.isEmpty() != z.isEmpty()) {
            refuse(key, landmark.label() + " needs both x and z, or neither.");
        }
        Double readX = number(key + ".x", x, Unit.MM);
        Double readZ = number(key + ".z", z, Unit.MM);
        if (readX != null && readZ != null) {
            tree.put(key, List.of(readX, readZ));
        }
        doubt(key, Unit.MM);
    }

    private void polyline(Polyline polyline) {
        String text = form.text(PREFIX + polyline.key());
        if (!text.isEmpty()) {
            List<Object> points = new ArrayList<>();
            text.lines().filter(line -> !line.isBlank()).forEach(line -> point(polyline, line, points));
            tree.put(polyline.key(), points);
        }
        doubt(polyline.key(), Unit.MM);
    }

    private void point(Polyline polyline, String line, List<Object> points) {
        List<String> pair = PointText.split(line);
        NumberReading x = pair.size() == 2 ? LengthText.parse(pair.get(0), bareUnit) : NumberReading.none();
        NumberReading z = pair.size() == 2 ? LengthText.parse(pair.get(1), bareUnit) : NumberReading.none();
        if (x.number() != null && z.number() != null) {
            points.add(List.of(LengthText.kept(x.number()), LengthText.kept(z.number())));
        } else {
            refuse(polyline.key() + "[" + points.size() + "]", pointFault(line, x, z));
            points.add(List.of(0, 0));
        }
    }

    private static String pointFault(String line, NumberReading x, NumberReading z) {
        return Stream.of(x, z)
                .filter(NumberReading::ambiguous)
                .map(reading -> shown(line) + " is not clear: " + reading.fault())
                .findFirst()
                .orElse(shown(line) + " is not a point: write x and z with a space between, one point a line.");
    }

    private void doubt(String key, Unit unit) {
        Double uncertainty = number("uncertainties." + key, form.text(PREFIX + "uncertainties." + key), unit);
        if (uncertainty != null) {
            uncertainties.put(key, uncertainty);
        }
        String origin = form.text(PREFIX + "origins." + key);
        if (!origin.isEmpty()) {
            origins.put(key, origin);
        }
    }

    private @Nullable Double number(String key, String text, Unit unit) {
        if (text.isEmpty()) {
            return null;
        }
        NumberReading reading = LengthText.parse(text, unit == Unit.MM ? bareUnit : "");
        String ambiguity = reading.ambiguous() ? reading.fault() : null;
        if (reading.number() == null) {
            refuse(key, ambiguity == null ? shown(text) + " is not a number" + example(unit) : ambiguity);
            return null;
        }
        return LengthText.kept(reading.number());
    }

    private static String example(Unit unit) {
        return unit == Unit.MM
                ? "; write a length such as 2850, 2850.5 mm or 112.2 in."
                : "; write one such as 28 or 28.5.";
    }

    private void refuse(String key, String message) {
        errors.add(() -> new FieldError(PREFIX + key, message));
    }

    /** A text as it may be repeated in a message: short, whatever was sent. */
    private static String shown(String text) {
        return text.length() <= 40 ? "\"" + text + "\"" : "\"" + text.substring(0, 40) + "...\"";
    }
}
