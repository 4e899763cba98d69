package studio.stancebook.exchange.mapping;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;

/** Reads the fields of one row: what belongs to a package beside its dimensions. */
final class FieldCells {

    private static final Pattern YEAR = Pattern.compile("\\d{4}");

    private final Mapping mapping;
    private final CellReader cells;
    private final Problems problems;

    FieldCells(Mapping mapping, CellReader cells, Problems problems) {
        this.mapping = mapping;
        this.cells = cells;
        this.problems = problems;
    }

    /** The text of a field; empty when it has no column or is blank. */
    String text(Field field) {
        return mapping.field(field).map(cells::text).orElse("");
    }

    /** The lines of a field that are not blank. */
    List<String> lines(Field field) {
        return text(field).lines().filter(line -> !line.isBlank()).toList();
    }

    /** The text of a field that every row needs; an error when it is blank. */
    String required(Field field) {
        String text = text(field);
        if (text.isEmpty()) {
            problems.error(heading(field), "", "The row has no " + field.key() + ".");
        }
        return text;
    }

    @Nullable
    Integer modelYear() {
        String text = value(Field.MODEL_YEAR);
        if (text.isEmpty()) {
            return null;
        }
        if (!YEAR.matcher(text).matches()) {
            problems.unreadable(heading(Field.MODEL_YEAR), text, "A model year has four digits.");
            return null;
        }
        return Integer.valueOf(text);
    }

    /** Which of some choices a field names; empty when it is blank or, with a problem, names none. */
    <T> Optional<T> choice(Field field, List<T> choices, Function<T, String> key) {
        String text = value(field);
        Optional<T> chosen = choices.stream()
                .filter(choice -> key.apply(choice).equalsIgnoreCase(text))
                .findFirst();
        if (chosen.isEmpty() && !text.isEmpty()) {
            String accepted = String.join(", ", choices.stream().map(key).toList());
            problems.unreadable(heading(field), text, "It is none of " + accepted + ".");
        }
        return chosen;
    }

    Map<String, Double> uncertainties() {
        Map<String, Double> read = new LinkedHashMap<>();
        packed(Field.UNCERTAINTIES).forEach((key, text) -> {
            CellNumber number = CellNumber.of(text, true);
            if (number.number() == null || number.unit() != null || !PlausibleCells.uncertainty(number.number())) {
                refuse(Field.UNCERTAINTIES, key + " " + text, "A standard uncertainty is from 0 to 500.");
            } else {
                read.put(key, number.number().doubleValue());
            }
        });
        return read;
    }

    Map<String, Origin> origins() {
        Map<String, Origin> read = new LinkedHashMap<>();
        packed(Field.ORIGINS)
                .forEach((key, text) -> Origin.ofKey(text)
                        .ifPresentOrElse(
                                known -> read.put(key, known),
                                () -> refuse(Field.ORIGINS, key + " " + text, "It is no origin.")));
        return read;
    }

    private Map<String, String> packed(Field field) {
        Map<String, String> known = new LinkedHashMap<>();
        PackedText.parse(text(field)).forEach((key, text) -> {
            if (PackedText.isValueKey(key)) {
                known.put(key, text);
            } else {
                refuse(field, key, "There is no dimension, landmark or polyline of this name.");
            }
        });
        return known;
    }

    /** Those of origin, scale and edition that the row names. */
    Set<Field> named() {
        return Stream.of(Field.ORIGIN, Field.SCALE, Field.EDITION)
                .filter(field -> !value(field).isEmpty())
                .collect(Collectors.toSet());
    }

    private String value(Field field) {
        return mapping.field(field).map(cells::value).orElse("");
    }

    private String heading(Field field) {
        return mapping.field(field).map(ColumnUse::heading).orElse("");
    }

    private void refuse(Field field, String value, String message) {
        problems.unreadable(heading(field), value, message);
    }
}
