package studio.stancebook.exchange.mapping;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.table.Cell;
import studio.stancebook.exchange.table.TableRow;

/** Rows and mappings for tests. */
final class Rows {

    private Rows() {}

    /** {@code "tire", "tyre:size"}: a heading and {@code name[:part][ unit]}, fields with {@code @} before them. */
    static Mapping mapping(String... headingsAndTargets) {
        Map<String, Object> tree = new LinkedHashMap<>();
        List<String> headings = new java.util.ArrayList<>();
        for (int i = 0; i < headingsAndTargets.length; i += 2) {
            headings.add(headingsAndTargets[i]);
            tree.put(headingsAndTargets[i], entry(headingsAndTargets[i + 1]));
        }
        return MappingJson.read(tree, headings);
    }

    private static Map<String, Object> entry(String target) {
        Map<String, Object> entry = new LinkedHashMap<>();
        String[] unit = target.split(" ");
        String[] part = unit[0].split(":");
        entry.put(part[0].startsWith("@") ? "field" : "dimension", part[0].replace("@", ""));
        if (part.length > 1) {
            entry.put("part", part[1]);
        }
        if (unit.length > 1) {
            entry.put("unit", unit[1]);
        }
        return entry;
    }

    static TableRow row(String... cells) {
        return new TableRow(7, Arrays.stream(cells).map(Cell::ofText).toList(), null);
    }

    static RowReading strict(Mapping mapping, TableRow row) {
        return new RowReader(mapping, false, Origin.SPECIFICATION).read(row);
    }

    static RowReading partial(Mapping mapping, TableRow row) {
        return new RowReader(mapping, true, Origin.SPECIFICATION).read(row);
    }
}
