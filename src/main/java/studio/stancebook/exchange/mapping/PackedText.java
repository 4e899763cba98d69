package studio.stancebook.exchange.mapping;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;

/** Several values with their names in one cell: {@code wheelbase 2; cowl 3}. */
public final class PackedText {

    private PackedText() {}

    /** The cell of some values by name. */
    public static String of(Map<String, String> values) {
        return values.entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(Collectors.joining("; "));
    }

    /** The values by name; what has no name and value is kept as a name without one. */
    static Map<String, String> parse(String cell) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String entry : cell.split(";")) {
            String[] parts = entry.strip().split("\\s+", 2);
            if (!entry.isBlank()) {
                values.put(parts[0], parts.length == 2 ? parts[1] : "");
            }
        }
        return values;
    }

    /** Lines {@code name: text}, for text that may hold anything but a line break. */
    public static String lines(Map<String, String> values) {
        return values.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + entry.getValue())
                .collect(Collectors.joining("\n"));
    }

    static Map<String, String> parseLines(String cell) {
        Map<String, String> values = new LinkedHashMap<>();
        cell.lines().filter(line -> !line.isBlank()).forEach(line -> {
            String[] parts = line.split(":", 2);
            values.put(parts[0].strip(), parts.length == 2 ? parts[1].strip() : "");
        });
        return values;
    }

    /** Whether a name is that of a recorded value. */
    static boolean isValueKey(String key) {
        return Dimension.ofKey(key).isPresent()
                || Landmark.ofKey(key).isPresent()
                || Polyline.ofKey(key).isPresent()
                || Arrays.stream(Axle.values()).anyMatch(axle -> axle.tyreKey().equals(key));
    }
}
