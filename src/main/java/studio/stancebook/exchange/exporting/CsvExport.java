package studio.stancebook.exchange.exporting;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategy;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import studio.stancebook.problem.CellGuard;

/** Writes a table as CSV: RFC 4180, UTF-8 without a byte order mark, lines ended by CR LF. */
final class CsvExport {

    /** Beside what has to be quoted, cells with what other programs separate cells by. */
    private static final QuoteStrategy QUOTED = new QuoteStrategy() {
        @Override
        public boolean quoteValue(int line, int field, String value) {
            return value.indexOf(';') >= 0 || value.indexOf('\t') >= 0;
        }
    };

    private CsvExport() {}

    static void write(TableSpool spool, Path to) throws IOException {
        List<ExportColumn> columns = spool.usedColumns();
        try (CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.CRLF)
                .quoteStrategy(QUOTED)
                .build(to, StandardCharsets.UTF_8)) {
            csv.writeRecord(columns.stream().map(ExportColumn::heading).toList());
            spool.forEach(cells -> csv.writeRecord(guarded(columns, cells)));
        }
    }

    /** Text that a spreadsheet would take for a formula gets its apostrophe; numbers stay numbers. */
    private static List<String> guarded(List<ExportColumn> columns, List<String> cells) {
        List<String> guarded = new ArrayList<>(cells.size());
        for (int i = 0; i < cells.size(); i++) {
            guarded.add(columns.get(i).number() ? cells.get(i) : CellGuard.guarded(cells.get(i)));
        }
        return guarded;
    }
}
