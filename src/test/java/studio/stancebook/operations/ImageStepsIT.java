package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * The image as the Dockerfile describes it, without an engine: its steps are done in a scratch folder, then its server is
 * started with the cache or not at all, answers, and ends when asked.
 */
class ImageStepsIT {

    private static final Duration LONGEST_START = Duration.ofMinutes(4);
    /** 128 and the number of SIGTERM. */
    private static final int ENDED_WHEN_ASKED = 143;

    @TempDir
    Path scratch;

    @Test
    void makeAServerThatStartsFromItsCacheAnswersAndEndsWhenAsked(TestReporter reporter) throws Exception {
        JavaOfTheImage java = JavaOfTheImage.find();
        UserWithoutRights user = UserWithoutRights.find(java);
        say(reporter, java, user);
        Files.setPosixFilePermissions(scratch, PosixFilePermissions.fromString("rwxr-xr-x"));
        Path root = Files.createDirectory(scratch.resolve("root"));
        Path temporary = Files.createDirectory(scratch.resolve("tmp"));
        user.own(temporary);

        ImageOnHost image = ImageOnHost.build(root, java, user);

        assertThat(image.here("/app/" + java.cache())).isNotEmptyFile();
        Map<String, FileTime> before = filesBut(image.here("/data"), root);
        Map<String, String> settings = settings(java, temporary);
        assertThat(image.isHealthy(settings)).as("healthy before the start").isFalse();
        StudioProcess server = image.start(settings);
        try {
            server.waitUntil("the health check succeeds", LONGEST_START, () -> image.isHealthy(settings));
            assertThat(signInPage(settings)).contains("<form", "name=\"password\"");
            assertThat(temporary.resolve("loaded"))
                    .content()
                    .containsPattern("studio\\.stancebook\\.Stancebook source: shared objects file");
        } finally {
            server.askToEnd();
        }
        Ended ended = server.waitForEnd(Duration.ofMinutes(1));
        assertThat(ended.exitCode()).as(ended.console()).isEqualTo(ENDED_WHEN_ASKED);
        assertThat(ended.console()).contains("Graceful shutdown complete");

        assertThat(image.here("/data/stancebook.mv.db")).isNotEmptyFile();
        assertThat(filesBut(image.here("/data"), root)).isEqualTo(before);
        assertThat(filesBut(temporary.resolve("loaded"), temporary).keySet()).containsExactly("");
        refusesACacheOfAnotherJar(image, java, settings);
    }

    /** That the server started says something only if it would not have done so without its cache. */
    private static void refusesACacheOfAnotherJar(ImageOnHost image, JavaOfTheImage java, Map<String, String> settings)
            throws IOException {
        Files.setLastModifiedTime(image.here("/app/stancebook.jar"), FileTime.fromMillis(0));
        Ended ended = image.start(settings).waitForEnd(LONGEST_START);
        assertThat(ended.exitCode()).as(java.cacheOrNothing()).isEqualTo(1);
        assertThat(ended.console()).contains("stancebook.jar").doesNotContain("Starting Stancebook");
    }

    private static void say(TestReporter reporter, JavaOfTheImage java, UserWithoutRights user) {
        String kind = java.isTheImages() ? "the release of the image" : "an older one, for want of release 25";
        String line = "Java " + java.release() + " (" + kind + "), as " + user.report();
        reporter.publishEntry("steps of the image", line);
        System.out.println("Steps of the image taken with " + line);
    }

    private static Map<String, String> settings(JavaOfTheImage java, Path temporary) throws IOException {
        try (ServerSocket free = new ServerSocket(0)) {
            return Map.of(
                    "STANCEBOOK_PORT", String.valueOf(free.getLocalPort()),
                    "STANCEBOOK_ADDRESS", "127.0.0.1",
                    "JDK_JAVA_OPTIONS",
                            String.join(
                                    " ",
                                    java.cacheOrNothing(),
                                    "-Djava.io.tmpdir=" + temporary,
                                    "-Xlog:class+load:file=" + temporary.resolve("loaded")));
        }
    }

    private static String signInPage(Map<String, String> settings) throws IOException, InterruptedException {
        URI page = URI.create("http://127.0.0.1:" + settings.get("STANCEBOOK_PORT") + "/sign-in");
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(page).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    /** Every file and folder under one, with when it was last changed, but those under another. */
    private static Map<String, FileTime> filesBut(Path left, Path root) throws IOException {
        Map<String, FileTime> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : (Iterable<Path>) files.filter(file -> !file.startsWith(left))::iterator) {
                boolean changesWithItsFiles = file.equals(root);
                found.put(
                        root.relativize(file).toString(),
                        changesWithItsFiles ? FileTime.fromMillis(0) : Files.getLastModifiedTime(file));
            }
        }
        return found;
    }
}
