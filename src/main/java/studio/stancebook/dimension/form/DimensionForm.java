package studio.stancebook.dimension.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.FieldErrors;

/**
 * A dimension set as typed into a page: texts by the name of their input, and what is wrong with them. Inputs are named
 * as the fields of errors are, {@code dimensions.wheelbase}, {@code dimensions.cowl.x}, {@code
 * dimensions.uncertainties.wheelbase}; so an error finds its input.
 *
 * @param typed the text of each input that holds one
 * @param errors what is wrong, by the names of {@link FieldError#field()}
 */
public record DimensionForm(Map<String, String> typed, List<FieldError> errors) {

    /** What the names of all inputs start with. */
    public static final String PREFIX = "dimensions.";

    public DimensionForm {
        typed = Map.copyOf(typed);
        errors = List.copyOf(errors);
    }

    /** A form in which nothing is typed yet, in the units of who asks. */
    public static DimensionForm blank() {
        return new DimensionForm(FormSettings.asRead(), List.of());
    }

    /** A form that shows a dimension set, in the units of who asks. */
    public static DimensionForm of(DimensionSet set) {
        return new DimensionForm(new FormWriter(set).texts(), List.of());
    }

    /** What a request carries; parameters of other forms are left out, and so are empty inputs. */
    public static DimensionForm typed(Map<String, String> parameters) {
        Map<String, String> typed = new LinkedHashMap<>();
        parameters.forEach((name, text) -> {
            if (name.startsWith(PREFIX) && !text.isBlank()) {
                typed.put(name, text.strip());
            }
        });
        return new DimensionForm(typed, List.of());
    }

    /** The same form with what is wrong; errors of other fields may be among them. */
    public DimensionForm with(List<FieldError> found) {
        return new DimensionForm(typed, found);
    }

    /** The same form with the text of another one in each input that is wrong, and in inputs that hold a wrong part. */
    public DimensionForm withSaved(DimensionForm saved, List<FieldError> wrong) {
        Map<String, String> mended = new LinkedHashMap<>(typed);
        for (FieldError error : wrong) {
            String name = error.field().replaceFirst("\\[.*", "");
            mended.remove(name);
            Optional.ofNullable(saved.typed().get(name)).ifPresent(text -> mended.put(name, text));
        }
        return new DimensionForm(mended, List.of());
    }

    /**
     * The dimension set that was typed; whether it is plausible and closes is for DimensionChecks.
     *
     * @param origin where values come from that name no origin of their own
     * @throws ImpossibleDimensions naming each input that cannot be read
     */
    public DimensionSet read(Origin origin) {
        return new FormReader(this).read(origin);
    }

    /** The text of each input that another dimension set gives another text, in the units of this form; empty where it has none. */
    public Map<String, String> rewritten(DimensionSet from, DimensionSet to) {
        Map<String, String> before = texts(from);
        Map<String, String> after = texts(to);
        Map<String, String> changed = new LinkedHashMap<>();
        after.forEach((name, text) -> {
            if (!text.equals(before.get(name))) {
                changed.put(name, text);
            }
        });
        before.keySet().stream().filter(name -> !after.containsKey(name)).forEach(name -> changed.put(name, ""));
        return changed;
    }

    private Map<String, String> texts(DimensionSet set) {
        return new FormWriter(set, FormSettings.lengths(this), FormSettings.angles(this)).texts();
    }

    /** The value of a dimension typed into this form; empty where it is no number. */
    public OptionalDouble value(Dimension dimension, String text) {
        return new FormReader(this).value(dimension, text);
    }

    /** The inputs that cannot be read. */
    public FieldErrors faults() {
        try {
            read(Origin.DRAWING);
            return FieldErrors.none();
        } catch (ImpossibleDimensions unreadable) {
            return FieldErrors.of(unreadable, PREFIX + Dimension.WHEELBASE.key());
        }
    }

    /** A length typed into this form, in mm; empty where it is no number. */
    public OptionalDouble length(String text) {
        return new FormReader(this).length(text);
    }

    /** The inputs in the order in which they are shown. */
    public List<Section> sections() {
        return new FormSections(this).all();
    }

    /** The choices that hold for the whole set: scale, unit of numbers, where angles are taken from, edition. */
    public List<ChoiceEntry> settings() {
        return FormSettings.of(this);
    }

    /** Whether one of those choices is wrong, so that they are shown open. */
    public boolean settingsWrong() {
        return settings().stream().anyMatch(ChoiceEntry::wrong);
    }

    /** The text of an input, empty when there is none. */
    public String text(String name) {
        return typed.getOrDefault(name, "");
    }

    /** What is wrong with an input; null when nothing is. */
    public @Nullable String error(String name) {
        return errors.stream()
                .filter(error -> error.field().equals(name))
                .map(FieldError::message)
                .findFirst()
                .orElse(null);
    }

    /** What is wrong with an input or a part of it, as {@code dimensions.underbody[3]} is a part. */
    @Nullable
    String errorWithin(String name) {
        return errors.stream()
                .filter(error -> error.field().equals(name) || error.field().startsWith(name + "["))
                .map(FieldError::message)
                .findFirst()
                .orElse(null);
    }
}
