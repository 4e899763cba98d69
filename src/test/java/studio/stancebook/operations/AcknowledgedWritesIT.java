package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever the server said it has recorded is there after it was killed, and nothing that nobody sent. {@code
 * -Dstancebook.kills=10} kills it more often.
 */
class AcknowledgedWritesIT {

    private static final int ROUNDS = Integer.getInteger("stancebook.kills", 2);
    private static final int WRITES = 40;
    private static final int WRITERS = 4;
    private static final String SEGMENT = "killed";

    @TempDir
    Path folder;

    @Test
    void surviveAKillRightAfterTheLastAnswer() throws IOException {
        Set<String> acknowledged = new HashSet<>();
        PackagedStudio studio = PackagedStudio.in(folder).andWait();
        StudioApi api = StudioApi.asLead(studio);
        api.addSegment(SEGMENT);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < WRITES; i++) {
                String name = round + "/" + i;
                api.made("/api/v1/packages", StudioApi.packageJson(SEGMENT, name));
                acknowledged.add(name);
            }
            studio.kill();
            studio = PackagedStudio.in(folder).andWait();
            api = api.at(studio);
            assertThat(api.packageNames()).as("after round %d", round).isEqualTo(acknowledged);
            assertThat(countInClass(api)).isEqualTo(acknowledged.size());
        }
        studio.close();
    }

    @Test
    void surviveAKillWhileFourWrite() {
        Set<String> sent = ConcurrentHashMap.newKeySet();
        Set<String> acknowledged = ConcurrentHashMap.newKeySet();
        PackagedStudio studio = PackagedStudio.in(folder).andWait();
        StudioApi api = StudioApi.asLead(studio);
        api.addSegment(SEGMENT);
        for (int round = 0; round < ROUNDS; round++) {
            CountDownLatch enough = new CountDownLatch(WRITES);
            List<Thread> writers = startWriters(round, api, sent, acknowledged, enough);
            waitFor(enough);
            studio.kill();
            writers.forEach(AcknowledgedWritesIT::waitFor);
            studio = PackagedStudio.in(folder).andWait();
            api = api.at(studio);
            Set<String> stored = api.packageNames();
            assertThat(stored).as("after round %d", round).containsAll(acknowledged);
            assertThat(sent).containsAll(stored);
            assertThat(countInClass(api)).isEqualTo(stored.size());
        }
        studio.close();
    }

    /** How many packages the class figures count, which is kept apart from the list of packages. */
    private static long countInClass(StudioApi api) {
        return api.read("/api/v1/segments/" + SEGMENT + "/statistics")
                .get("packages")
                .asLong();
    }

    private static List<Thread> startWriters(
            int round, StudioApi api, Set<String> sent, Set<String> acknowledged, CountDownLatch enough) {
        return IntStream.range(0, WRITERS)
                .mapToObj(writer -> {
                    Thread thread = new Thread(() -> write(round + "/" + writer, api, sent, acknowledged, enough));
                    thread.start();
                    return thread;
                })
                .toList();
    }

    /** Writes until nobody answers any more. */
    private static void write(
            String prefix, StudioApi api, Set<String> sent, Set<String> acknowledged, CountDownLatch enough) {
        for (int i = 0; ; i++) {
            String name = prefix + "/" + i;
            sent.add(name);
            try {
                if (api.postPackage(SEGMENT, name).statusCode() == 201) {
                    acknowledged.add(name);
                    enough.countDown();
                }
            } catch (IOException killed) {
                return;
            }
        }
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            assertThat(latch.await(2, TimeUnit.MINUTES))
                    .as("enough writes were answered")
                    .isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static void waitFor(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
