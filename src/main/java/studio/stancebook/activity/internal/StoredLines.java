package studio.stancebook.activity.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.FieldChange;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** The lines and the head in the database. */
@Component
public class StoredLines {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<List<FieldChange>> CHANGES = new TypeReference<>() {};
    private static final int AT_ONCE = 500;
    private static final int MOST_KINDS = 100;

    private final JdbcClient database;

    public StoredLines(JdbcClient database) {
        this.database = database;
    }

    /** The head, which nobody else can hold until the transaction ends. */
    ChainHead lockHead() {
        return database.sql("SELECT line_count, hash FROM activity_head WHERE id = 1 FOR UPDATE")
                .query(ChainHead.class)
                .single();
    }

    /** The head as it is now; that of an empty record where there is none. */
    public ChainHead head() {
        return findHead().orElse(new ChainHead(0, ActivityLine.NO_HASH));
    }

    Optional<ChainHead> findHead() {
        return database.sql("SELECT line_count, hash FROM activity_head WHERE id = 1")
                .query(ChainHead.class)
                .optional();
    }

    void begin() {
        database.sql("INSERT INTO activity_head (id, line_count, hash) VALUES (1, 0, ?)")
                .param(ActivityLine.NO_HASH)
                .update();
    }

    /** Adds a line behind the last one, whose head the caller holds. */
    void add(ActivityLine line) {
        database.sql("""
                        INSERT INTO activity_line (number, done_at, person_id, person_name, action, kind, subject, title,
                            changes, previous_hash, hash)
                        VALUES (:number, :at, :personId, :person, :action, :kind, :subject, :title, :changes, :previous, :hash)
                        """)
                .param("number", line.line())
                .param("at", line.at().atOffset(ZoneOffset.UTC))
                .param("personId", line.byId(), java.sql.Types.BIGINT)
                .param("person", line.by())
                .param("action", line.action())
                .param("kind", line.kind())
                .param("subject", line.subject())
                .param("title", line.title())
                .param("changes", JSON.writeValueAsString(line.changes()))
                .param("previous", line.previousHash())
                .param("hash", line.hash())
                .update();
        database.sql("UPDATE activity_head SET line_count = ?, hash = ? WHERE id = 1")
                .params(line.line(), line.hash())
                .update();
    }

    /** A page of lines, newest first. */
    public Page<ActivityLine> page(ActivityFilter filter, Pageable page) {
        Where where = new Where(filter);
        List<ActivityLine> found = where.on(
                        "SELECT * FROM activity_line", " ORDER BY number DESC LIMIT :size OFFSET :skipped")
                .param("size", page.getPageSize())
                .param("skipped", page.getOffset())
                .query(StoredLines::read)
                .list();
        long total = where.on("SELECT COUNT(*) FROM activity_line", "")
                .query(Long.class)
                .single();
        return new PageImpl<>(found, page, total);
    }

    /** Reads lines up to one in their order, without holding more than some. */
    public void forEach(ActivityFilter filter, long last, Consumer<ActivityLine> consumer) {
        Where where = new Where(filter);
        long after = Long.MIN_VALUE;
        List<ActivityLine> found;
        do {
            found = where.on(
                            "SELECT * FROM activity_line",
                            " AND number > :after AND number <= :last ORDER BY number LIMIT :size")
                    .param("after", after)
                    .param("last", last)
                    .param("size", AT_ONCE)
                    .query(StoredLines::read)
                    .list();
            for (ActivityLine line : found) {
                consumer.accept(line);
                after = line.line();
            }
        } while (found.size() == AT_ONCE);
    }

    /** The number of the first line behind the head of the same moment; empty if there is none. */
    Optional<Long> behindHead() {
        return database.sql("""
                        SELECT number FROM activity_line
                        WHERE number > COALESCE((SELECT line_count FROM activity_head WHERE id = 1), 0)
                        ORDER BY number LIMIT 1""").query(Long.class).optional();
    }

    /** All kinds, one short look at the index each. */
    public List<String> kinds() {
        List<String> kinds = new ArrayList<>();
        Optional<String> next = kindAfter("");
        while (next.isPresent() && kinds.size() < MOST_KINDS) {
            kinds.add(next.get());
            next = kindAfter(next.get());
        }
        return kinds;
    }

    private Optional<String> kindAfter(String kind) {
        return database.sql("SELECT kind FROM activity_line WHERE kind > ? ORDER BY kind LIMIT 1")
                .param(kind)
                .query(String.class)
                .optional();
    }

    /** Everybody who ever did something, by id, with the name they had last; short looks at the index. */
    public Map<Long, String> people() {
        Map<Long, String> people = new LinkedHashMap<>();
        Optional<Long> next = personAfter(0);
        while (next.isPresent()) {
            people.put(next.get(), lastName(next.get()));
            next = personAfter(next.get());
        }
        return people;
    }

    private Optional<Long> personAfter(long id) {
        return database.sql("SELECT person_id FROM activity_line WHERE person_id > ? ORDER BY person_id LIMIT 1")
                .param(id)
                .query(Long.class)
                .optional();
    }

    private String lastName(long id) {
        return database.sql("SELECT person_name FROM activity_line WHERE person_id = ? ORDER BY number DESC LIMIT 1")
                .param(id)
                .query(String.class)
                .single();
    }

    private static ActivityLine read(ResultSet row, int number) throws SQLException {
        return new ActivityLine(
                row.getLong("number"),
                row.getObject("done_at", OffsetDateTime.class).toInstant(),
                row.getObject("person_id", Long.class),
                row.getString("person_name"),
                row.getString("action"),
                row.getString("kind"),
                row.getString("subject"),
                row.getString("title"),
                JSON.readValue(row.getString("changes"), CHANGES),
                row.getString("previous_hash"),
                row.getString("hash"));
    }

    /** A filter as SQL. */
    private final class Where {

        private final StringBuilder sql = new StringBuilder(" WHERE TRUE");
        private final Map<String, Object> values = new LinkedHashMap<>();

        Where(ActivityFilter filter) {
            and("person_id = :person", "person", filter.person());
            and("kind = :kind", "kind", filter.kind());
            and("subject = :subject", "subject", filter.subject());
            and(
                    "done_at >= :from",
                    "from",
                    filter.from() == null ? null : filter.from().atOffset(ZoneOffset.UTC));
            and(
                    "done_at < :before",
                    "before",
                    filter.before() == null ? null : filter.before().atOffset(ZoneOffset.UTC));
        }

        private void and(String condition, String name, @Nullable Object value) {
            if (value != null) {
                sql.append(" AND ").append(condition);
                values.put(name, value);
            }
        }

        JdbcClient.StatementSpec on(String select, String rest) {
            return database.sql(select + sql + rest).params(values);
        }
    }
}
