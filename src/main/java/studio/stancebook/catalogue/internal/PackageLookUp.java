package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Looks packages up by many names or digests at once. Each is joined as a row of its own, which the index finds, whatever the
 * database knows of a table that the transaction under way is filling; a long list of values behind IN it compares with
 * every row instead.
 */
@Component
class PackageLookUp {

    private static final String NAMED = "SELECT p.name, p.model_year FROM UNNEST(:names) AS wanted (name)"
            + " JOIN benchmark_package p ON p.segment_id = :segment AND p.name = wanted.name";

    private static final String OF_DIGESTS =
            "SELECT p.dimension_digest AS digest, p.segment_id, MIN(p.id) AS first_id, MAX(p.id) AS last_id"
                    + " FROM UNNEST(:digests) AS wanted (digest)"
                    + " JOIN benchmark_package p ON p.dimension_digest = wanted.digest"
                    + " GROUP BY p.dimension_digest, p.segment_id";

    private final JdbcClient database;

    PackageLookUp(JdbcClient database) {
        this.database = database;
    }

    /** A name that is taken. */
    record Taken(String name, @Nullable Integer modelYear) {}

    /** Those of the names, each given once, that packages of a segment have. */
    List<Taken> named(long segmentId, Collection<String> names) {
        return database.sql(NAMED)
                .param("names", names.toArray(String[]::new))
                .param("segment", segmentId)
                .query(Taken.class)
                .list();
    }

    /** The first and the last package of a segment with the same dimensions; the same one where it is alone. */
    record Alike(String digest, long segmentId, long firstId, long lastId) {}

    /** What packages there are with the digests, each given once. */
    List<Alike> ofDigests(Collection<String> digests) {
        return database.sql(OF_DIGESTS)
                .param("digests", digests.toArray(String[]::new))
                .query(Alike.class)
                .list();
    }
}
