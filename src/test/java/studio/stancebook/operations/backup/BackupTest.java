package studio.stancebook.operations.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** Backups of a studio that is worked in; run on each database. */
abstract class BackupTest {

    private static final int WRITERS = 4;
    private static final Pattern COUNTS = Pattern.compile(".*[{ ]revision=(\\d+).*segment_key=([^,}]+).*");
    private static final Pattern BELONGS = Pattern.compile(".*[{ ]name=(while-[^,}]+).*segment_id=(\\d+).*");

    @Autowired
    StudioClients studio;

    @Autowired
    Backups backups;

    @Autowired
    DataSource store;

    @TempDir
    Path folder;

    @Test
    void bringsBackEverything() throws SQLException, IOException {
        add("everything", "one");
        studio.token(Role.DESIGNER);

        Path backup = download();

        assertThat(withoutRecord(StoreContent.of(restored(backup)))).isEqualTo(withoutRecord(StoreContent.of(store)));
    }

    /** The record has a line more since: that the backup was taken. */
    private static Map<String, List<String>> withoutRecord(Map<String, List<String>> content) {
        Map<String, List<String>> rest = new TreeMap<>(content);
        assertThat(rest.keySet().removeIf(table -> table.startsWith("activity")))
                .isTrue();
        return rest;
    }

    @Test
    void leavesALineInTheRecord() throws IOException {
        download();

        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/activity?size=1")
                .exchange()
                .expectBody()
                .jsonPath("$.items[0].action")
                .isEqualTo("taken")
                .jsonPath("$.items[0].kind")
                .isEqualTo("backup");
    }

    @Test
    void isOneMomentWhileFourWrite() throws Exception {
        String segment = "while-" + UUID.randomUUID();
        addSegment(segment);
        Set<String> acknowledged = ConcurrentHashMap.newKeySet();
        AtomicBoolean enough = new AtomicBoolean();
        CountDownLatch underway = new CountDownLatch(20);
        List<Thread> writers = startWriters(segment, acknowledged, underway, enough);
        assertThat(underway.await(1, TimeUnit.MINUTES)).isTrue();

        Set<String> before = new HashSet<>(acknowledged);
        Path backup = download();
        enough.set(true);
        for (Thread writer : writers) {
            writer.join();
        }

        Map<String, List<String>> content = StoreContent.of(restored(backup));
        Set<String> stored = names(content, segment);
        assertThat(stored).containsAll(before);
        assertThat(acknowledged).hasSizeGreaterThan(before.size()).containsAll(stored);
        // Each package raises the revision of its class by one in the same transaction.
        assertThat(revision(content, segment)).isEqualTo(stored.size());
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"DESIGNER", "TUTOR", "LEARNER", "VIEWER"})
    void isForLeadsOnly(Role role) {
        studio.api(role).post().uri("/api/v1/backups").exchange().expectStatus().isForbidden();
        assertThat(studio.browser(role).get("/studio/backup").statusCode()).isEqualTo(403);
    }

    @Test
    void isADownloadOnThePage() throws IOException {
        var lead = studio.browser(Role.LEAD);

        HttpResponse<String> page = lead.get("/studio/backup");
        HttpResponse<String> file = lead.submit("/studio/backup", "/studio/backup", Map.of());

        assertThat(page.body()).contains("Download a backup").contains("--stancebook.restore=");
        assertThat(lead.get("/studio").body()).contains("/studio/backup");
        assertThat(file.headers().firstValue("Content-Type")).hasValue("application/gzip");
        assertThat(file.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(name ->
                        assertThat(name).matches("attachment; filename=\"stancebook-\\d{8}-\\d{6}\\.jsonl\\.gz\""));
    }

    @Test
    void isMadeOneAtATime() throws IOException {
        backups.write(() -> {
            studio.api(Role.LEAD)
                    .post()
                    .uri("/api/v1/backups")
                    .exchange()
                    .expectStatus()
                    .isEqualTo(409)
                    .expectHeader()
                    .contentType(MediaType.APPLICATION_PROBLEM_JSON);
            return OutputStream.nullOutputStream();
        });

        download();
    }

    private Path download() throws IOException {
        byte[] bytes = studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/backups")
                .exchange()
                .expectStatus()
                .isOk()
                .expectHeader()
                .contentType("application/gzip")
                .returnResult(byte[].class)
                .getResponseBody();
        return Files.write(Files.createTempFile(folder, "backup", ".jsonl.gz"), bytes);
    }

    /** Into a new database of H2, whatever it came from. */
    private static DataSource restored(Path backup) throws SQLException, IOException {
        DataSource empty =
                JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
        Flyway.configure()
                .dataSource(empty)
                .locations("classpath:db/migration", "classpath:db/migration-h2")
                .load()
                .migrate();
        new Restore(empty).run(BackupFile.check(backup));
        return empty;
    }

    private List<Thread> startWriters(
            String segment, Set<String> acknowledged, CountDownLatch underway, AtomicBoolean enough) {
        List<Thread> writers = new ArrayList<>();
        for (int writer = 0; writer < WRITERS; writer++) {
            String prefix = segment + "-" + writer + "-";
            Thread thread = new Thread(() -> {
                for (int i = 0; !enough.get(); i++) {
                    addPackage(segment, prefix + i).expectStatus().isCreated();
                    acknowledged.add(prefix + i);
                    underway.countDown();
                }
            });
            thread.start();
            writers.add(thread);
        }
        return writers;
    }

    private void add(String segment, String name) {
        addSegment(segment);
        addPackage(segment, name).expectStatus().isCreated();
    }

    private void addSegment(String key) {
        post("/api/v1/segments", Map.of("key", key, "name", key, "description", "For a backup"))
                .expectStatus()
                .isCreated();
    }

    private RestTestClient.ResponseSpec addPackage(String segment, String name) {
        return post(
                "/api/v1/packages",
                Map.of(
                        "name",
                        name,
                        "segment",
                        segment,
                        "dimensions",
                        Map.of("wheelbase", 2650, "cowl", List.of(500, 1100))));
    }

    private RestTestClient.ResponseSpec post(String uri, Map<String, ?> body) {
        return studio.api(Role.LEAD)
                .post()
                .uri(uri)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange();
    }

    private static Set<String> names(Map<String, List<String>> content, String segment) {
        Set<String> names = new HashSet<>();
        for (String row : content.get("benchmark_package")) {
            Matcher matcher = BELONGS.matcher(row);
            if (matcher.matches() && matcher.group(1).startsWith(segment)) {
                names.add(matcher.group(1));
            }
        }
        return names;
    }

    private static long revision(Map<String, List<String>> content, String segment) {
        return content.get("segment").stream()
                .map(COUNTS::matcher)
                .filter(row -> row.matches() && row.group(2).equals(segment))
                .map(row -> Long.parseLong(row.group(1)))
                .findFirst()
                .orElseThrow();
    }
}
