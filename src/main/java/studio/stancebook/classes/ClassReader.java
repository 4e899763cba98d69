package studio.stancebook.classes;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.classes.ClassRows.Seen;
import studio.stancebook.classes.layout.ClassLayout;

/**
 * Reads classes from the database: at first in pages, later only what changed since a revision. What it gives is the class
 * at one revision exactly, because the last step reads the revision and all that changed in one statement.
 */
@Component
public class ClassReader {

    static final int PAGE = 2000;

    private static final String HEAD = "SELECT 1 AS kind, p.id, p.name, p.model_year, p.origin, ";

    private static final String CHANGED = " FROM benchmark_package p"
            + " WHERE p.segment_id = :segment AND p.class_revision > :since AND p.set_aside_at IS NULL";

    /** The sum keeps the database from collecting all that changed by its revision, and sorting it, for every page. */
    private static final String PAGE_OF_ROWS = " FROM benchmark_package p"
            + " WHERE p.segment_id = :segment AND p.class_revision + 0 > :since AND p.set_aside_at IS NULL"
            + " AND p.id > :after ORDER BY p.segment_id, p.id FETCH FIRST " + PAGE + " ROWS ONLY";

    private static final String NOTHING = "NULL, NULL, NULL, CAST(NULL AS DOUBLE PRECISION ARRAY), NULL, NULL";

    private static final String PAGE_OF_DEPARTURES = "SELECT id, package_id FROM class_departure"
            + " WHERE segment_id = :segment AND revision > :since AND id > :after"
            + " ORDER BY id FETCH FIRST " + PAGE + " ROWS ONLY";

    /** The kinds of row: 0 the revision itself, 1 a package, 2 the id of a package that left. */
    private static final String REVISION_AND_DEPARTURES =
            " UNION ALL SELECT 0, s.revision, " + NOTHING + " FROM segment s WHERE s.id = :segment"
                    + " UNION ALL SELECT 2, d.package_id, " + NOTHING + " FROM class_departure d"
                    + " WHERE d.segment_id = :segment AND d.revision > :since"
                    + " FETCH FIRST " + (PAGE + 1) + " ROWS ONLY";

    private static final String NEWER =
            "SELECT id, created_at FROM benchmark_package" + " WHERE segment_id = :segment AND class_revision > :since";

    private static final String DEPARTED_SINCE =
            "SELECT DISTINCT package_id FROM class_departure WHERE segment_id = :segment AND revision > :since";

    private static final String SET_ASIDE_SINCE = " FROM benchmark_package p"
            + " WHERE p.segment_id = :segment AND p.class_revision <= :since AND p.set_aside_at IS NOT NULL"
            + " AND EXISTS (SELECT 1 FROM class_departure d WHERE d.segment_id = :segment AND d.package_id = p.id"
            + " AND d.revision > :since)";

    private final JdbcClient database;

    public ClassReader(JdbcClient database) {
        this.database = database;
    }

    /** A class at a revision. */
    public record ReadClass(long revision, ClassRows rows) {}

    /** A segment's id and the revision of its class. */
    public record Head(long id, String segmentKey, long revision) {}

    /** Where the class of a segment is now. */
    public Optional<Head> head(String segmentKey) {
        return database.sql("SELECT id, segment_key, revision FROM segment WHERE segment_key = ?")
                .param(segmentKey)
                .query(Head.class)
                .optional();
    }

    /** Where the classes of all segments are now. */
    public List<Head> heads() {
        return database.sql("SELECT id, segment_key, revision FROM segment")
                .query(Head.class)
                .list();
    }

    /** The whole class. */
    public ReadClass all(long segmentId, ClassLayout layout) {
        return since(segmentId, new ReadClass(-1, ClassRows.none(layout.size())), layout, ClassUpdate.unseen());
    }

    /** The class as it is now, from what it was; {@code seen} is told of the rows that went and came. */
    public ReadClass since(long segmentId, ReadClass before, ClassLayout layout, Seen seen) {
        ReadClass from = before;
        while (true) {
            Changes changes = changes(segmentId, from.revision(), layout);
            if (changes.rows.size() + changes.departed.size() < PAGE) {
                ClassChange change = ClassChange.of(changes.rows, changes.departed);
                ClassRows rows = change.isEmpty() ? from.rows() : from.rows().changed(change, seen);
                return new ReadClass(changes.revision, rows);
            }
            from = inPages(segmentId, from, layout, seen);
        }
    }

    /** Takes over a change of any size; other changes may slip in, so a last step from the same revision has to follow. */
    private ReadClass inPages(long segmentId, ReadClass from, ClassLayout layout, Seen seen) {
        long revision = revision(segmentId);
        ClassRows rows = from.revision() < 0 ? from.rows() : withoutDeparted(segmentId, from, seen);
        List<ClassRow> page = page(segmentId, from.revision(), -1, layout);
        while (!page.isEmpty()) {
            rows = rows.changed(ClassChange.rows(page), seen);
            page = page(segmentId, from.revision(), page.get(page.size() - 1).id(), layout);
        }
        return new ReadClass(revision, rows);
    }

    private ClassRows withoutDeparted(long segmentId, ReadClass from, Seen seen) {
        ClassRows rows = from.rows();
        List<Departure> page = departures(segmentId, from.revision(), -1);
        while (!page.isEmpty()) {
            List<Long> gone = page.stream().map(Departure::packageId).toList();
            rows = rows.changed(ClassChange.of(List.of(), gone), seen);
            page = departures(
                    segmentId, from.revision(), page.get(page.size() - 1).id());
        }
        return rows;
    }

    private long revision(long segmentId) {
        return database.sql("SELECT revision FROM segment WHERE id = ?")
                .param(segmentId)
                .query(Long.class)
                .single();
    }

    private record Departure(long id, long packageId) {}

    private List<Departure> departures(long segmentId, long since, long after) {
        return database.sql(PAGE_OF_DEPARTURES)
                .param("segment", segmentId)
                .param("since", since)
                .param("after", after)
                .query(Departure.class)
                .list();
    }

    private List<ClassRow> page(long segmentId, long since, long after, ClassLayout layout) {
        return database.sql(HEAD + layout.columns() + PAGE_OF_ROWS)
                .param("layout", layout.fingerprint())
                .param("segment", segmentId)
                .param("since", since)
                .param("after", after)
                .query((result, number) -> ClassRow.of(result, layout))
                .list();
    }

    private Changes changes(long segmentId, long since, ClassLayout layout) {
        Changes changes = new Changes();
        database.sql(HEAD + layout.columns() + CHANGED + REVISION_AND_DEPARTURES)
                .param("layout", layout.fingerprint())
                .param("segment", segmentId)
                .param("since", since)
                .query(result -> {
                    switch (result.getInt("kind")) {
                        case 0 -> changes.revision = result.getLong("id");
                        case 1 -> changes.rows.add(ClassRow.of(result, layout));
                        default -> changes.departed.add(result.getLong("id"));
                    }
                });
        return changes;
    }

    private static final class Changes {

        private long revision;
        private final List<ClassRow> rows = new ArrayList<>();
        private final List<Long> departed = new ArrayList<>();
    }

    /** A class as it was, and how many of its packages are not kept as they were. */
    public record PastRows(ClassRows rows, int missing) {}

    /**
     * A class as it was at a revision before. Kept are the packages that are still as they were then, counting or set aside.
     *
     * @param now the class now
     * @param at when the class was at that revision, by which packages that came later are told from those that changed
     */
    public PastRows past(long segmentId, ReadClass now, long revision, Instant at, ClassLayout layout) {
        List<Newer> newer = database.sql(NEWER)
                .param("segment", segmentId)
                .param("since", revision)
                .query(Newer.class)
                .list();
        List<ClassRow> asideSince = setAsideSince(segmentId, revision, layout);
        Set<Long> missing = departedSince(segmentId, revision);
        newer.stream().filter(one -> one.wasThere(at)).map(Newer::id).forEach(missing::add);
        asideSince.forEach(row -> missing.remove(row.id()));
        List<Long> changed = newer.stream().map(Newer::id).toList();
        ClassRows rows = now.rows().changed(ClassChange.of(asideSince, changed), ClassUpdate.unseen());
        return new PastRows(rows, missing.size());
    }

    private List<ClassRow> setAsideSince(long segmentId, long revision, ClassLayout layout) {
        return database.sql(HEAD + layout.columns() + SET_ASIDE_SINCE)
                .param("layout", layout.fingerprint())
                .param("segment", segmentId)
                .param("since", revision)
                .query((result, number) -> ClassRow.of(result, layout))
                .list();
    }

    private Set<Long> departedSince(long segmentId, long revision) {
        return new HashSet<>(database.sql(DEPARTED_SINCE)
                .param("segment", segmentId)
                .param("since", revision)
                .query(Long.class)
                .list());
    }

    /** A package that took its present form after a revision. */
    private record Newer(long id, OffsetDateTime createdAt) {

        boolean wasThere(Instant at) {
            return !createdAt.toInstant().isAfter(at);
        }
    }
}
