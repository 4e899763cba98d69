package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged server where its file cannot grow any more. Not even the superuser can make a full disk everywhere, so the
 * operating system limits the size of the file instead: for the database it is the same failed write.
 */
class FullDiskIT {

    /** Blocks of 1,024 bytes: room for a new database and some dozens of packages. */
    private static final int BLOCKS = 6144;

    private static final int MORE_THAN_FIT = 6_000;

    @TempDir
    Path folder;

    @Test
    void tellsThatThereIsNoRoomAndLosesNothing() throws IOException {
        PackagedStudio studio = PackagedStudio.in(folder)
                .under("bash", "-c", "ulimit -S -f " + BLOCKS + "; exec \"$@\"", "bash")
                .andWait();
        StudioApi api = StudioApi.asLead(studio);
        api.addSegment("full");
        Set<String> acknowledged = new HashSet<>();

        HttpResponse<String> refusal = fill(api, acknowledged);
        assertThat(refusal.statusCode()).isEqualTo(507);
        assertThat(refusal.body())
                .contains("/problems/no-room")
                .contains("no room left")
                .doesNotContain("h2");

        liftLimit(studio);
        HttpResponse<String> withRoom = api.postPackage("full", "with room");
        assertThat(withRoom.statusCode()).as(withRoom.body() + studio.console()).isEqualTo(201);
        acknowledged.add("with room");
        studio.kill();

        try (PackagedStudio again = PackagedStudio.in(folder).andWait()) {
            assertThat(api.at(again).packageNames()).isSubsetOf(sent()).containsAll(acknowledged);
        }
    }

    /** Adds packages until one is refused; returns the refusal. */
    private static HttpResponse<String> fill(StudioApi api, Set<String> acknowledged) throws IOException {
        for (int i = 0; i < MORE_THAN_FIT; i++) {
            HttpResponse<String> answer = api.postPackage("full", "package " + i);
            if (answer.statusCode() != 201) {
                return answer;
            }
            acknowledged.add("package " + i);
        }
        throw new AssertionError("All " + MORE_THAN_FIT + " packages fitted.");
    }

    private static Set<String> sent() {
        Set<String> names = new HashSet<>(Set.of("with room"));
        for (int i = 0; i < MORE_THAN_FIT; i++) {
            names.add("package " + i);
        }
        return names;
    }

    private static void liftLimit(PackagedStudio studio) {
        List<String> command = List.of("prlimit", "--pid", String.valueOf(studio.processId()), "--fsize=unlimited");
        Ended ended = StudioProcess.start(command, Path.of("."), Map.of()).waitForEnd(Duration.ofMinutes(1));
        assertThat(ended.exitCode()).as(ended.console()).isZero();
    }
}
