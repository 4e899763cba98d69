package studio.stancebook.exchange.importing;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.mapping.NamedSegment;
import studio.stancebook.exchange.mapping.RowReader;
import studio.stancebook.exchange.mapping.RowReading;
import studio.stancebook.exchange.table.Table;
import studio.stancebook.exchange.table.TableRow;

/** Packages from the rows of a table. */
final class TableRows implements PackageRows {

    private final Table table;
    private final RowReader reader;

    TableRows(Table table, RowReader reader) {
        this.table = table;
        this.reader = reader;
    }

    @Override
    public @Nullable RowReading next() {
        TableRow row = table.next();
        return row == null ? null : reader.read(row);
    }

    @Override
    public @Nullable NamedSegment segment() {
        TableRow row = table.next();
        return row == null ? null : reader.segment(row);
    }

    @Override
    public double share() {
        return table.share();
    }

    @Override
    public void close() throws IOException {
        table.close();
    }
}
