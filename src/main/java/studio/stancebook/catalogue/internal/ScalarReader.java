package studio.stancebook.catalogue.internal;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.statistics.SortedColumn;

/** Reads the scalars of a class, which only screening needs, so that they take no memory between writes. */
@Component
class ScalarReader {

    private static final int PAGE = 2000;

    /** Up to so many packages are asked for by their ids; more are looked for among all of their class. */
    private static final int FEW = 500;

    private static final String OF_SEGMENT = "SELECT p.id, p.scalars FROM benchmark_package p"
            + " WHERE p.segment_id = (SELECT id FROM segment WHERE segment_key = :segment) AND p.set_aside_at IS NULL";

    private final JdbcClient database;

    ScalarReader(JdbcClient database) {
        this.database = database;
    }

    /** Told of the scalars of a package in the order of {@link Dimension}; NaN where there is none. */
    @FunctionalInterface
    interface Reader {

        void read(long id, double[] scalars);
    }

    /** The columns of those dimensions that any package of the class has. */
    Map<Dimension, SortedColumn> columns(String segment) {
        Dimension[] dimensions = Dimension.values();
        Growing[] growing = new Growing[dimensions.length];
        Arrays.setAll(growing, place -> new Growing());
        scan(segment, 0, Long.MAX_VALUE, (id, scalars) -> {
            for (int place = 0; place < scalars.length; place++) {
                growing[place].add(scalars[place]);
            }
        });
        Map<Dimension, SortedColumn> columns = new EnumMap<>(Dimension.class);
        for (int place = 0; place < growing.length; place++) {
            if (growing[place].size > 0) {
                columns.put(dimensions[place], SortedColumn.of(growing[place].values()));
                growing[place] = new Growing();
            }
        }
        return columns;
    }

    /** Reads the packages of a class that are among these. */
    void ofPackages(String segment, Collection<Long> ids, Reader reader) {
        if (ids.size() > FEW) {
            scan(segment, Collections.min(ids), Collections.max(ids), (id, scalars) -> {
                if (ids.contains(id)) {
                    reader.read(id, scalars);
                }
            });
        } else if (!ids.isEmpty()) {
            database.sql(OF_SEGMENT + " AND p.id IN (:ids)")
                    .param("segment", segment)
                    .param("ids", ids)
                    .query(result -> {
                        reader.read(result.getLong("id"), NullableNumbers.read(result, "scalars"));
                    });
        }
    }

    private void scan(String segment, long first, long last, Reader reader) {
        long after = first - 1;
        List<Row> page;
        do {
            page = page(segment, after, last);
            for (Row row : page) {
                reader.read(row.id, row.scalars);
                after = row.id;
            }
        } while (page.size() == PAGE);
    }

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Row(long id, double[] scalars) {}

    private List<Row> page(String segment, long after, long last) {
        return database.sql(OF_SEGMENT + " AND p.id > :after AND p.id <= :last ORDER BY p.segment_id, p.id FETCH FIRST "
                        + PAGE + " ROWS ONLY")
                .param("segment", segment)
                .param("after", after)
                .param("last", last)
                .query((result, number) -> new Row(result.getLong("id"), NullableNumbers.read(result, "scalars")))
                .list();
    }

    /** Numbers that become more; NaN is left out. */
    private static final class Growing {

        private double[] all = new double[16];
        private int size;

        void add(double value) {
            if (!Double.isNaN(value)) {
                all = size == all.length ? Arrays.copyOf(all, 2 * size) : all;
                all[size++] = value;
            }
        }

        double[] values() {
            return Arrays.copyOf(all, size);
        }
    }
}
