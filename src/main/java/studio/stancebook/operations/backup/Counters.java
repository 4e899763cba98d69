package studio.stancebook.operations.backup;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The counters of a store. */
final class Counters {

    private Counters() {}

    static List<Counter> of(Connection connection) throws SQLException {
        List<Counter> counters = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(Dialect.of(connection).counters())) {
            while (found.next()) {
                counters.add(new Counter(found.getString(1), found.getString(2), found.getLong(3)));
            }
        }
        return counters;
    }

    /** Has the counters of a store go on from where those of another stood. */
    static void restart(Connection connection, List<Counter> backedUp) throws SQLException {
        Map<String, Counter> known = new TreeMap<>();
        for (Counter counter : of(connection)) {
            known.put(key(counter.name(), counter.column()), counter);
        }
        for (Counter counter : backedUp) {
            Counter here = known.get(key(counter.name(), counter.column()));
            if (here == null) {
                throw new DamagedBackup(
                        "it names the counter " + counter.name() + ", which this program does not have");
            }
            try (Statement statement = connection.createStatement()) {
                statement.execute(counter.restart(here.name(), here.column()));
            }
        }
    }

    private static String key(String name, @Nullable String column) {
        return StoredTable.key(name) + "." + (column == null ? "" : StoredTable.key(column));
    }
}
