package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.mapping.Guess;
import studio.stancebook.exchange.mapping.Guesses;
import studio.stancebook.exchange.mapping.Mapping;
import studio.stancebook.exchange.mapping.MappingJson;
import studio.stancebook.exchange.mapping.RowReader;
import studio.stancebook.exchange.table.Table;
import studio.stancebook.exchange.table.TableFile;
import studio.stancebook.exchange.table.TableKind;
import studio.stancebook.exchange.table.TableRow;

/** A file on disk with all that is needed to read its packages, as often as needed. */
public sealed interface PackageFile {

    /** Where it is. */
    Path path();

    /** Opens it for one reading. */
    PackageRows open(ImportOptions options) throws IOException;

    /**
     * A table with its mapping.
     *
     * @param sheet which sheet of a workbook; null for the first
     */
    record OfTable(TableFile file, @Nullable String sheet, Mapping mapping) implements PackageFile {

        @Override
        public Path path() {
            return file.path();
        }

        /** The headings of its columns. */
        List<String> headings() throws IOException {
            try (Table table = file.open(sheet)) {
                return table.headings();
            }
        }

        @Override
        public PackageRows open(ImportOptions options) throws IOException {
            return new TableRows(file.open(sheet), new RowReader(mapping, options.partial(), options.origin()));
        }
    }

    /** JSON, which names its values itself. */
    record OfJson(Path path) implements PackageFile {

        @Override
        public PackageRows open(ImportOptions options) throws IOException {
            return JsonRows.open(path, options);
        }
    }

    /**
     * A file that somebody sent.
     *
     * @param mapping as a JSON library reads the object; null to take the guesses from the headings
     * @param sheet which sheet of a workbook; null for the first
     * @throws studio.stancebook.problem.Refusal if the file is no table or the mapping does not fit it
     */
    static PackageFile of(Path path, @Nullable Map<String, ?> mapping, @Nullable String sheet) throws IOException {
        if (TableKind.of(path) == TableKind.JSON) {
            return new OfJson(path);
        }
        TableFile file = TableFile.of(path);
        TableSample sample = TableSample.of(file, sheet);
        return new OfTable(
                file,
                sheet,
                mapping == null
                        ? Guesses.mapping(sample.headings(), sample.guesses())
                        : MappingJson.read(mapping, sample.headings()));
    }

    /**
     * The beginning of a table, to show and to guess by.
     *
     * @param columns for each column some of its cells that are not blank
     * @param rows the first rows, cut to the heading's width
     */
    record TableSample(List<String> headings, List<List<String>> columns, List<List<String>> rows) {

        private static final int LOOKED_AT = 200;
        private static final int CELLS = 20;
        private static final int SHOWN = 3;

        public TableSample {
            headings = List.copyOf(headings);
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /** Reads the beginning of a table. */
        public static TableSample of(TableFile file, @Nullable String sheet) throws IOException {
            try (Table table = file.open(sheet)) {
                List<String> headings = table.headings();
                List<List<String>> columns = new ArrayList<>();
                headings.forEach(heading -> columns.add(new ArrayList<>()));
                List<List<String>> rows = new ArrayList<>();
                TableRow row = table.next();
                for (int i = 0; i < LOOKED_AT && row != null; i++) {
                    take(row, columns, rows);
                    row = table.next();
                }
                return new TableSample(headings, columns, rows);
            }
        }

        private static void take(TableRow row, List<List<String>> columns, List<List<String>> rows) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < columns.size(); column++) {
                String text = row.cell(column).stripped();
                cells.add(text);
                if (!text.isEmpty() && columns.get(column).size() < CELLS) {
                    columns.get(column).add(text);
                }
            }
            if (rows.size() < SHOWN) {
                rows.add(cells);
            }
        }

        /** What each column probably holds. */
        public List<Optional<Guess>> guesses() {
            return Guesses.of(headings, columns);
        }
    }
}
