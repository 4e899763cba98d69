package studio.stancebook.catalogue.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.statistics.SortedColumn;

/** Reads the scalars of a class, which only screening needs, so that they take no memory between writes. */
@Component
class ScalarReader {

    private static final int AT_ONCE = 1000;

    private final JdbcClient database;

    ScalarReader(JdbcClient database) {
        this.database = database;
    }

    /**
     * The scalars of a class.
     *
     * @param wanted the scalars of some packages of it by their ids, NaN where there is none
     */
    record Scalars(Map<Dimension, SortedColumn> columns, Map<Long, double[]> wanted) {

        SortedColumn column(Dimension dimension) {
            return columns.getOrDefault(dimension, SortedColumn.empty());
        }
    }

    /** The columns of those dimensions that one of the wanted packages has. */
    Scalars of(String segment, Set<Long> ids) {
        Map<Long, double[]> wanted = ofPackages(segment, ids);
        List<Dimension> needed = Arrays.stream(Dimension.values())
                .filter(d -> wanted.values().stream().anyMatch(values -> !Double.isNaN(values[d.ordinal()])))
                .toList();
        Map<Dimension, SortedColumn> columns = new HashMap<>();
        if (!needed.isEmpty()) {
            ofClass(segment, needed)
                    .forEach((dimension, values) -> columns.put(
                            dimension, SortedColumn.of(values.build().toArray())));
        }
        return new Scalars(columns, wanted);
    }

    private Map<Long, double[]> ofPackages(String segment, Set<Long> ids) {
        Map<Long, double[]> wanted = new HashMap<>();
        for (List<Long> chunk : Chunks.of(new ArrayList<>(ids))) {
            database.sql("SELECT p.id, p.scalars FROM benchmark_package p JOIN segment s ON s.id = p.segment_id"
                            + " WHERE s.segment_key = :segment AND p.set_aside_at IS NULL AND p.id IN (:ids)")
                    .param("segment", segment)
                    .param("ids", chunk)
                    .query(result -> {
                        wanted.put(result.getLong("id"), NullableNumbers.read(result, "scalars"));
                    });
        }
        return wanted;
    }

    private Map<Dimension, DoubleStream.Builder> ofClass(String segment, List<Dimension> needed) {
        Map<Dimension, DoubleStream.Builder> columns = new HashMap<>();
        needed.forEach(dimension -> columns.put(dimension, DoubleStream.builder()));
        database.sql("SELECT p.scalars FROM benchmark_package p JOIN segment s ON s.id = p.segment_id"
                        + " WHERE s.segment_key = :segment AND p.set_aside_at IS NULL")
                .withFetchSize(AT_ONCE)
                .param("segment", segment)
                .query(result -> {
                    double[] values = NullableNumbers.read(result, "scalars");
                    columns.forEach((dimension, column) -> {
                        if (!Double.isNaN(values[dimension.ordinal()])) {
                            column.add(values[dimension.ordinal()]);
                        }
                    });
                });
        return columns;
    }
}
