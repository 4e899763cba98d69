package studio.stancebook.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code demo/archetypes.txt}. */
final class Archetypes {

    private Archetypes() {}

    /** The classes in the order of the file. */
    static List<Archetype> all() {
        List<String[]> rows = InventedTable.rows("archetypes.txt");
        String[] head = rows.get(0);
        List<Archetype> archetypes = new ArrayList<>();
        for (int column = 1; column < head.length; column++) {
            archetypes.add(new Archetype(head[column], traits(rows.subList(1, rows.size()), column + 1)));
        }
        return archetypes;
    }

    private static Map<String, Archetype.Trait> traits(List<String[]> rows, int column) {
        Map<String, Archetype.Trait> traits = new LinkedHashMap<>();
        for (String[] row : rows) {
            String[] cell = row[column].split(":", 2);
            traits.put(
                    row[0],
                    new Archetype.Trait(
                            Double.parseDouble(cell[0]), Double.parseDouble(cell[1]), Double.parseDouble(row[1])));
        }
        return traits;
    }
}
