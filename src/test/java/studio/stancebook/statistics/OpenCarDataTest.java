package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Statistics of two open data sets of cars, class by class, against R 4.2.2 (twelve digits). */
class OpenCarDataTest {

    private static final double MM_PER_INCH = 25.4;
    private static final double TOLERANCE = 1e-11;

    @Test
    void agreesWithROnCars93() {
        assertEquals(7 * 5, compare("cars93.csv", "cars93_reference.json"));
    }

    @Test
    void agreesWithROnCar90() {
        assertEquals(7 * 8, compare("car90.csv", "car90_reference.json"));
    }

    private static int compare(String data, String reference) {
        JsonNode root = ReferenceFile.json(reference);
        List<Map<String, String>> rows = rowsUsed(data, root.get("meta").get("rows_used"));
        int compared = 0;
        for (var oneClass : root.get("classes").properties()) {
            for (var measure : oneClass.getValue().properties()) {
                SortedColumn column = column(rows, oneClass.getKey(), measure.getKey());
                compareFigures(measure.getValue(), column, oneClass.getKey() + " " + measure.getKey());
                compared++;
            }
        }
        return compared;
    }

    private static void compareFigures(JsonNode expected, SortedColumn column, String what) {
        Summary summary = column.summary();
        assertEquals(expected.get("n").asInt(), summary.n(), what);
        Map<String, Double> actual = Map.ofEntries(
                Map.entry("mean", summary.mean().orElseThrow()),
                Map.entry("sd", summary.standardDeviation().orElseThrow()),
                Map.entry("min", summary.min().orElseThrow()),
                Map.entry("max", summary.max().orElseThrow()),
                Map.entry("median", summary.median().orElseThrow()),
                Map.entry("q25_type7", summary.p25().orElseThrow()),
                Map.entry("q75_type7", summary.p75().orElseThrow()),
                Map.entry("q05_type7", summary.p5().orElseThrow()),
                Map.entry("q95_type7", summary.p95().orElseThrow()),
                Map.entry("q05_type8", column.quantile(0.05, QuantileType.TYPE_8)),
                Map.entry("q95_type8", column.quantile(0.95, QuantileType.TYPE_8)),
                Map.entry("q05_type6", column.quantile(0.05, QuantileType.TYPE_6)),
                Map.entry("q95_type6", column.quantile(0.95, QuantileType.TYPE_6)),
                Map.entry("mad_raw", summary.medianAbsoluteDeviation().orElseThrow()),
                Map.entry("iqr_type7", summary.interquartileRange().orElseThrow()));
        actual.forEach((figure, value) -> {
            double wanted = expected.get(figure).asDouble();
            double scale = Math.max(Math.abs(wanted), summary.mean().orElseThrow() / 100);
            assertEquals(wanted, value, TOLERANCE * scale, what + " " + figure);
        });
        Set<String> notCompared = new HashSet<>(expected.propertyNames());
        notCompared.removeAll(actual.keySet());
        assertEquals(Set.of("n", "tukey_hinges"), notCompared, what);
    }

    private static SortedColumn column(List<Map<String, String>> rows, String type, String measure) {
        return SortedColumn.of(rows.stream()
                .filter(row -> type.equals("ALL") || type.equals(row.get("type")))
                .mapToDouble(row -> value(row, measure))
                .toArray());
    }

    private static double value(Map<String, String> row, String measure) {
        if (measure.endsWith("_mm")) {
            return inches(row, measure.replace("_mm", "")) * MM_PER_INCH;
        }
        String[] parts = measure.split("_over_");
        assertEquals(2, parts.length, measure);
        return inches(row, parts[0]) / inches(row, parts[1]);
    }

    private static double inches(Map<String, String> row, String name) {
        return Double.parseDouble(row.get(name + "_in"));
    }

    private static List<Map<String, String>> rowsUsed(String data, JsonNode used) {
        List<Map<String, String>> rows = rows(data);
        assertTrue(rows.size() > 90);
        if (used == null) {
            return rows;
        }
        Set<String> numbers = Arrays.stream(ReferenceFile.doubles(used))
                .mapToObj(n -> String.valueOf((int) n))
                .collect(Collectors.toSet());
        return rows.stream().filter(row -> numbers.contains(row.get("row"))).toList();
    }

    private static List<Map<String, String>> rows(String data) {
        List<String> lines = ReferenceFile.lines(data);
        String[] header = lines.get(0).split(",");
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new java.util.HashMap<>();
            for (int i = 0; i < header.length; i++) {
                row.put(header[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }
}
