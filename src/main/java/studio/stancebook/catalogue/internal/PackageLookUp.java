package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.PackageName;

/**
 * Looks packages of a segment up by many names or digests at once. Each is looked up by a query of its own within the statement,
 * which the index serves whatever the database knows of a table that the transaction under way is filling; joined with, or behind
 * IN, they would be compared with every row of it.
 */
@Component
class PackageLookUp {

    private static final String TAKEN = "SELECT wanted.name, wanted.model_year"
            + " FROM UNNEST(:names, :years) AS wanted (name, model_year)"
            + " WHERE (SELECT COUNT(*) FROM benchmark_package p WHERE p.name = wanted.name AND p.segment_id = :segment"
            + " AND p.model_year IS NOT DISTINCT FROM wanted.model_year) > 0";

    private static final String IDS = "SELECT id FROM (SELECT (SELECT MIN(p.id) FROM benchmark_package p"
            + " WHERE p.name = wanted.name AND p.segment_id = :segment"
            + " AND p.model_year IS NOT DISTINCT FROM wanted.model_year) AS id"
            + " FROM UNNEST(:names, :years) AS wanted (name, model_year)) found WHERE id IS NOT NULL";

    private static final String OF_DIGEST =
            " FROM benchmark_package p WHERE p.dimension_digest = wanted.digest AND p.segment_id = :segment)";

    private static final String ALIKE = "SELECT * FROM (SELECT wanted.digest, (SELECT MIN(p.id)" + OF_DIGEST
            + " AS first_id, (SELECT MAX(p.id)" + OF_DIGEST
            + " AS last_id FROM UNNEST(:digests) AS wanted (digest)) found WHERE first_id IS NOT NULL";

    private final JdbcClient database;

    PackageLookUp(JdbcClient database) {
        this.database = database;
    }

    /** The ids of the packages that have one of the names. */
    List<Long> idsOf(StoredSegment segment, List<PackageName> names) {
        return database.sql(IDS)
                .param("names", names.stream().map(PackageName::name).toArray(String[]::new))
                .param("years", names.stream().map(PackageName::modelYear).toArray(Integer[]::new))
                .param("segment", segment.id())
                .query(Long.class)
                .list();
    }

    /** Those of the names that packages of their segment have. */
    List<PackageName> taken(StoredSegment segment, List<PackageName> names) {
        return database.sql(TAKEN)
                .param("names", names.stream().map(PackageName::name).toArray(String[]::new))
                .param("years", names.stream().map(PackageName::modelYear).toArray(Integer[]::new))
                .param("segment", segment.id())
                .query((row, number) -> new PackageName(
                        row.getString("name"), segment.key(), row.getObject("model_year", Integer.class)))
                .list();
    }

    /** The first and the last package of the same dimensions; the same one where it is alone. */
    record Alike(String digest, long firstId, long lastId) {}

    /** What packages a segment has with the digests, each given once. */
    List<Alike> ofDigests(long segmentId, Collection<String> digests) {
        return database.sql(ALIKE)
                .param("digests", digests.toArray(String[]::new))
                .param("segment", segmentId)
                .query(Alike.class)
                .list();
    }
}
