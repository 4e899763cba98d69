package studio.stancebook.operations.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import javax.sql.DataSource;
import org.h2.store.fs.FilePath;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.http.MediaType;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** A studio on a disk that runs full, and is made room on again. */
@StudioTest
@Import(FullDiskTest.OnNarrowDisk.class)
class FullDiskTest {

    private static final Path FOLDER = Path.of("target", "narrow-disk").toAbsolutePath();
    private static final int CONNECTIONS = 8;
    private static final long RESERVE = 64L * 1024 * 1024;
    private static final int MOST_WITHIN = 500;

    /** Whether somebody else fills the disk between our look and our writing. */
    private static volatile boolean othersAreQuicker;

    @Autowired
    StudioClients studio;

    @Autowired
    DataSource store;

    @TestConfiguration(proxyBeanMethods = false)
    static class OnNarrowDisk {

        @Bean
        @Primary
        FreeBytes freeOnNarrowDisk() {
            return folder -> othersAreQuicker ? Long.MAX_VALUE : NarrowDisk.free();
        }
    }

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) throws IOException {
        Files.createDirectories(FOLDER);
        Files.deleteIfExists(FOLDER.resolve("stancebook.mv.db"));
        FilePath.register(new NarrowDisk());
        NarrowDisk.holds(FOLDER.resolve("stancebook.mv.db"));
        properties.add("spring.datasource.hikari.maximum-pool-size", () -> CONNECTIONS);
        properties.add(
                "spring.datasource.url",
                () -> "jdbc:h2:file:narrow:" + FOLDER.resolve("stancebook")
                        + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0");
    }

    @BeforeEach
    void makeRoom() {
        othersAreQuicker = false;
        NarrowDisk.makeRoom();
    }

    @Test
    void recordsNothingWhileRoomIsShortAndReadsOn() {
        add("before").expectStatus().isCreated();
        NarrowDisk.leave(RESERVE - 1);

        assertNoRoom(tryToAdd("short"), "nearly full");
        assertThat(isThere("before")).isTrue();
        assertThat(isThere("short")).isFalse();

        NarrowDisk.leave(RESERVE);
        add("after").expectStatus().isCreated();
    }

    /** The pool trusts connections that were used a moment ago; after a full disk none of them works any more. */
    @Test
    void recordsAgainAtOnceHoweverManyConnectionsWereOpen() throws SQLException {
        add("before-many").expectStatus().isCreated();
        useManyConnections();
        NarrowDisk.leave(0);
        othersAreQuicker = true;

        assertNoRoom(addUntilRefused("full-for-many"), "no room left");
        NarrowDisk.makeRoom();
        othersAreQuicker = false;

        add("after-many").expectStatus().isCreated();
        assertThat(isThere("before-many") && isThere("after-many")).isTrue();
    }

    private void useManyConnections() throws SQLException {
        Deque<Connection> open = new ArrayDeque<>();
        for (int i = 0; i < CONNECTIONS; i++) {
            open.add(store.getConnection());
        }
        while (!open.isEmpty()) {
            open.pop().close();
        }
    }

    /** H2 closes a file that could not grow, and writes a little to open it again. */
    @Test
    void losesNothingWhereTheDiskRanFullUnderAWrite() {
        add("acknowledged").expectStatus().isCreated();
        NarrowDisk.leave(0);
        othersAreQuicker = true;

        assertNoRoom(addUntilRefused("too-late"), "no room left");

        othersAreQuicker = false;
        assertNoRoom(tryToAdd("still-short"), "nearly full");

        NarrowDisk.makeRoom();
        add("with-room").expectStatus().isCreated();
        assertThat(isThere("acknowledged") && isThere("with-room")).isTrue();
    }

    private RestTestClient.ResponseSpec add(String key) {
        return studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/segments")
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of("key", key, "name", key, "description", "d".repeat(2000)))
                .exchange();
    }

    private EntityExchangeResult<String> tryToAdd(String key) {
        return add(key).returnResult(String.class);
    }

    /** The file has room within it for some more, as every file of H2 has that was closed and opened. */
    private EntityExchangeResult<String> addUntilRefused(String key) {
        EntityExchangeResult<String> answer = tryToAdd(key);
        for (int i = 0; i < MOST_WITHIN && answer.getStatus().is2xxSuccessful(); i++) {
            answer = tryToAdd(key + "-" + i);
        }
        return answer;
    }

    private boolean isThere(String key) {
        int status = studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/segments/" + key)
                .exchange()
                .returnResult(String.class)
                .getStatus()
                .value();
        assertThat(status).isIn(200, 404);
        return status == 200;
    }

    private static void assertNoRoom(EntityExchangeResult<String> answer, String words) {
        assertThat(answer.getStatus().value()).isEqualTo(507);
        assertThat(answer.getResponseBody()).contains("\"type\":\"/problems/no-room\"", words);
    }
}
