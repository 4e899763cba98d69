package studio.stancebook.exchange.web;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.exchange.mapping.ColumnUnit;
import studio.stancebook.exchange.mapping.Field;

/** A CSV table with a heading for every dimension and one invented vehicle in it. */
final class ExampleTable {

    private static final String END = "\r\n";

    private ExampleTable() {}

    static String text() {
        List<String> headings = new ArrayList<>(
                List.of(Field.NAME.key(), Field.SEGMENT.key(), Field.MODEL_YEAR.key(), Field.ORIGIN.key(), "tyre"));
        List<String> cells =
                new ArrayList<>(List.of("Invented example", "compact", "2026", "specification", "205/55R16"));
        for (Dimension dimension : Dimension.values()) {
            String unit = ColumnUnit.natural(dimension.unit()).key();
            headings.add(unit.isEmpty() ? dimension.key() : dimension.key() + " [" + unit + "]");
            cells.add(
                    switch (dimension) {
                        case WHEELBASE -> "2650";
                        case OVERALL_LENGTH -> "4300";
                        case OVERALL_WIDTH -> "1800";
                        case OVERALL_HEIGHT -> "1460";
                        default -> "";
                    });
        }
        return String.join(",", headings) + END + String.join(",", cells) + END;
    }
}
