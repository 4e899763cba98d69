package studio.stancebook.exchange.table;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A table whose reading has its time. */
record TimedTable(Table table, ReadingTime time) implements Table {

    @Override
    public List<String> headings() {
        return table.headings();
    }

    @Override
    public @Nullable TableRow next() {
        time.resume();
        try {
            return table.next();
        } finally {
            time.pause();
        }
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
