package studio.stancebook.operations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import studio.stancebook.OneProcessAtATime;

/**
 * The packaged jar as an operator installs it without a container: unpacked, and started with a cache, by the files of the
 * image. Made once and again only for a newer jar.
 */
final class Installation {

    private static final Path BUILD = Path.of("target").toAbsolutePath();
    private static final Path SCRIPTS = Path.of("src/image").toAbsolutePath();
    private static final Duration LONGEST_STEP = Duration.ofMinutes(5);
    private static final JavaOfTheImage JAVA = JavaOfTheImage.find();

    /** Java as quick to start as it can be, which is what the tests do most, with little memory. */
    private static final Map<String, String> ENVIRONMENT = Map.of(
            "JAVA_HOME",
            JAVA.home().toString(),
            "JDK_JAVA_OPTIONS",
            "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx256m");

    private static final Installation INSTALLED =
            OneProcessAtATime.make("installed", () -> make(BUILD.resolve("installed")));

    private final Path folder;

    private Installation(Path folder) {
        this.folder = folder;
    }

    static Installation get() {
        return INSTALLED;
    }

    /** Where the jar stands. */
    Path folder() {
        return folder;
    }

    /** The command that starts the server, to which arguments of the program may be added. */
    String command() {
        return folder.resolve("start.sh").toString();
    }

    /** What the command needs besides the settings of the server. */
    Map<String, String> environment() {
        return ENVIRONMENT;
    }

    private static Installation make(Path folder) {
        try {
            Path cache = folder.resolve(JAVA.cache());
            if (!isNewer(cache, PackagedJar.find())) {
                Files.createDirectories(folder);
                Path layers = folder.resolve("layers");
                run("rm", "-rf", layers.toString());
                run(SCRIPTS.resolve("extract.sh").toString(), BUILD.toString(), layers.toString());
                for (String layer : List.of("dependencies", "snapshot-dependencies", "application")) {
                    run("cp", "-a", layers.resolve(layer) + "/.", folder.toString());
                }
                run("cp", "-a", SCRIPTS + "/.", folder.toString());
                run(folder.resolve("train.sh").toString());
            }
            return new Installation(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isNewer(Path made, Path source) throws IOException {
        return Files.exists(made) && Files.getLastModifiedTime(made).compareTo(Files.getLastModifiedTime(source)) > 0;
    }

    private static void run(String... command) {
        Ended ended = StudioProcess.start(List.of(command), BUILD, ENVIRONMENT).waitForEnd(LONGEST_STEP);
        if (ended.exitCode() != 0) {
            throw new IllegalStateException(
                    List.of(command) + " ended with " + ended.exitCode() + ":\n" + ended.console());
        }
    }
}
