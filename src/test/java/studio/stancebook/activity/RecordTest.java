package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.access.Author;
import studio.stancebook.activity.internal.ChainHead;
import studio.stancebook.activity.internal.StoredLines;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Stale;

/** The record holds what was committed and nothing else, and shows what was done to it since. */
abstract class RecordTest {

    @Autowired
    ActivityRecord activity;

    @Autowired
    StoredLines stored;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    JdbcClient database;

    @Autowired
    PlatformTransactionManager transactions;

    private long lines() {
        return stored.head().lineCount();
    }

    private String segment() {
        String segment = Invented.key("record");
        segments.create(segment, "Segment of a test", "");
        return segment;
    }

    private List<ActivityLine> of(String kind, Object subject) {
        ActivityFilter filter = new ActivityFilter(null, kind, String.valueOf(subject), null, null);
        return activity.list(filter, PageRequest.of(0, 50)).getContent();
    }

    @Test
    void tellsWhatChangedFromWhatToWhat() {
        String segment = segment();
        PackageView added = catalogue.add(Invented.draft(segment, "Tern", 2850), new Author(null, "Designer"));
        catalogue.change(
                added.id(),
                new ExpectedVersion(added.version()),
                Invented.draft(segment, "Tern", 2860.5),
                new Author(null, "Designer"));

        List<ActivityLine> lines = of("package", added.id());

        assertThat(lines).extracting(ActivityLine::action).containsExactly("changed", "added");
        assertThat(lines.get(0).changes()).containsExactly(new FieldChange("wheelbase", "2850", "2860.5"));
        assertThat(lines.get(1).changes())
                .contains(new FieldChange("wheelbase", null, "2850"), new FieldChange("segment", null, segment));
        assertThat(lines.get(0).title()).isEqualTo("Tern (2020)");
        assertThat(lines.get(0).by()).isEqualTo("the server itself");
    }

    @Test
    void tellsEverythingOfWhatWasDeleted() {
        PackageView added = catalogue.add(Invented.draft(segment(), "Tern", 2850), new Author(null, "Designer"));
        catalogue.delete(added.id(), new ExpectedVersion(added.version()));

        ActivityLine deleted = of("package", added.id()).get(0);

        assertThat(deleted.action()).isEqualTo("deleted");
        assertThat(deleted.changes())
                .contains(new FieldChange("name", "Tern", null), new FieldChange("wheelbase", "2850", null));
    }

    @Test
    void hasNothingOfWhatWasTakenBackOrRefused() {
        String segment = segment();
        PackageView added = catalogue.add(Invented.draft(segment, "Tern", 2850), new Author(null, "Designer"));
        long before = lines();

        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            catalogue.add(Invented.draft(segment, "Gull", 2850), new Author(null, "Designer"));
            status.setRollbackOnly();
        });
        assertThatThrownBy(() -> catalogue.delete(added.id(), new ExpectedVersion(added.version() + 1)))
                .isInstanceOf(Stale.class);
        assertThatThrownBy(() -> segments.create(segment, "Again", "")).isInstanceOf(Conflict.class);

        assertThat(lines()).isEqualTo(before);
        assertThat(activity.verify().whole()).isTrue();
    }

    @Test
    void keepsAllLinesOfATransactionOrNone() {
        long before = lines();
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            segment();
            segment();
            assertThat(lines()).as("the head is taken last").isEqualTo(before);
        });
        assertThat(lines()).isEqualTo(before + 2);
    }

    @Test
    void letsNothingBeWrittenThatItCannotRecord() {
        String segment = segment();
        ChainHead head = stored.head();
        database.sql("DELETE FROM activity_head").update();
        try {
            assertThatThrownBy(() -> catalogue.add(Invented.draft(segment, "Tern", 2850), new Author(null, "Designer")))
                    .isInstanceOf(RuntimeException.class);
        } finally {
            database.sql("INSERT INTO activity_head (id, line_count, hash) VALUES (1, ?, ?)")
                    .params(head.lineCount(), head.hash())
                    .update();
        }
        assertThat(segments.get(segment).packages()).isZero();
    }

    @Test
    void findsTheLinesThatAreAskedFor() {
        String segment = segment();
        Instant at = of("segment", segment).get(0).at();

        assertThat(activity.list(
                        new ActivityFilter(null, "segment", segment, at, at.plusMillis(1)), PageRequest.of(0, 9)))
                .hasSize(1);
        assertThat(activity.list(new ActivityFilter(null, "segment", segment, null, at), PageRequest.of(0, 9)))
                .isEmpty();
        assertThat(activity.list(new ActivityFilter(-1L, "segment", segment, null, null), PageRequest.of(0, 9)))
                .isEmpty();
        assertThat(activity.kinds()).contains("segment").isSorted();
    }

    /** What is found after tampering with a record of at least ten lines, which is undone afterwards. */
    private ChainCheck after(Consumer<Long> tampering) {
        for (int i = 0; i < 10; i++) {
            segment();
        }
        assertThat(activity.verify().whole()).isTrue();
        long last = lines();
        return new TransactionTemplate(transactions).execute(status -> {
            status.setRollbackOnly();
            tampering.accept(last);
            return activity.verify();
        });
    }

    private void sql(String statement, Object... values) {
        assertThat(database.sql(statement).params(values).update()).isEqualTo(1);
    }

    private static void assertBroken(ChainCheck found, long line) {
        assertThat(found.whole()).isFalse();
        assertThat(found.brokenLine()).isEqualTo(line);
        assertThat(found.lines()).isEqualTo(line - 1);
        assertThat(found.finding()).contains("line " + line + ":");
    }

    @Test
    void findsAChangedLine() {
        for (String change : List.of(
                "done_at = TIMESTAMP WITH TIME ZONE '2031-05-06 07:08:09+00:00'",
                "person_id = 4711",
                "person_name = 'Somebody else'",
                "action = 'made up'",
                "kind = 'person'",
                "subject = 'another'",
                "title = 'Another'",
                "changes = '[]'",
                "hash = '" + "1".repeat(64) + "'")) {
            long[] line = new long[1];
            ChainCheck found = after(last -> {
                line[0] = last - 3;
                sql("UPDATE activity_line SET " + change + " WHERE number = ?", line[0]);
            });
            assertBroken(found, line[0]);
        }
    }

    @Test
    void findsARemovedLine() {
        long last = lines() + 10;
        assertBroken(after(at -> sql("DELETE FROM activity_line WHERE number = ?", at - 3)), last - 3);
    }

    @Test
    void findsARemovedLineWhoseNumberWasClosedUp() {
        long last = lines() + 10;
        ChainCheck found = after(at -> {
            sql("DELETE FROM activity_line WHERE number = ?", at - 1);
            sql("UPDATE activity_line SET number = ? WHERE number = ?", at - 1, at);
            sql("UPDATE activity_head SET line_count = ?", at - 1);
        });
        assertBroken(found, last - 1);
    }

    @Test
    void findsThatTheLastLineIsGone() {
        long last = lines() + 10;
        assertBroken(after(at -> sql("DELETE FROM activity_line WHERE number = ?", at)), last);
    }

    @Test
    void findsThatTheLastLineAndItsCountAreGone() {
        long last = lines() + 10;
        ChainCheck found = after(at -> {
            sql("DELETE FROM activity_line WHERE number = ?", at);
            sql("UPDATE activity_head SET line_count = ?", at - 1);
        });
        assertThat(found.whole()).isFalse();
        assertThat(found.brokenLine()).isEqualTo(last - 1);
    }

    @Test
    void findsExchangedLines() {
        long last = lines() + 10;
        ChainCheck found = after(at -> {
            sql("UPDATE activity_line SET number = 1000000000 WHERE number = ?", at - 5);
            sql("UPDATE activity_line SET number = ? WHERE number = ?", at - 5, at - 4);
            sql("UPDATE activity_line SET number = ? WHERE number = 1000000000", at - 4);
        });
        assertBroken(found, last - 5);
    }

    private static final String COPY = """
            INSERT INTO activity_line (number, done_at, person_id, person_name, action, kind, subject, title, changes,
                previous_hash, hash)
            SELECT ?, done_at, person_id, person_name, action, kind, 'made up', title, changes, previous_hash, hash
            FROM activity_line WHERE number = ?""";

    @Test
    void findsALinePutIn() {
        long last = lines() + 10;
        ChainCheck found = after(at -> {
            sql("UPDATE activity_line SET number = ? WHERE number = ?", at + 1, at);
            sql(COPY, at, at + 1);
            sql("UPDATE activity_head SET line_count = ?", at + 1);
        });
        assertBroken(found, last);
    }

    @Test
    void findsALinePutInBehindTheLast() {
        long last = lines() + 10;
        assertBroken(after(at -> sql(COPY, at + 1, at)), last + 1);
    }

    @Test
    void findsThatTheHeadIsGone() {
        assertBroken(after(at -> sql("DELETE FROM activity_head")), 1);
    }
}
