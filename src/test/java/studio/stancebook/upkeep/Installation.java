package studio.stancebook.upkeep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import studio.stancebook.OneProcessAtATime;

/**
 * The packaged jar as an operator installs it: unpacked, with an archive of its classes so that it starts in a third of the
 * time. Made once and again only for a newer jar.
 */
final class Installation {

    private static final Path BUILD = Path.of("target").toAbsolutePath();
    private static final String JAR = "stancebook.jar";
    private static final String ARCHIVE = "classes.jsa";
    private static final Duration LONGEST_TRAINING = Duration.ofMinutes(5);

    private static final Installation INSTALLED =
            OneProcessAtATime.make("installed", () -> make(BUILD.resolve("installed")));

    private final Path folder;

    private Installation(Path folder) {
        this.folder = folder;
    }

    static Installation get() {
        return INSTALLED;
    }

    /** Where the jar stands; a server is started from here, because the archive holds for this place only. */
    Path folder() {
        return folder;
    }

    /** The command that starts the server, with options of Java and arguments of the program. */
    List<String> command(List<String> javaOptions, List<String> arguments) {
        List<String> command = new ArrayList<>(quickJava());
        command.add("-XX:SharedArchiveFile=" + ARCHIVE);
        command.addAll(javaOptions);
        command.addAll(List.of("-jar", JAR));
        command.addAll(arguments);
        return command;
    }

    /** The packaged jar, one file. */
    static Path jar() {
        try (Stream<Path> files = Files.list(BUILD)) {
            return files.filter(file -> file.getFileName().toString().matches("stancebook-.*\\.jar"))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(
                            "There is no packaged jar in " + BUILD + ": run mvn verify, or mvn package first."));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Installation make(Path folder) {
        try {
            Path archive = folder.resolve(ARCHIVE);
            if (!isNewer(archive, jar())) {
                extract(folder);
                train(folder);
            }
            return new Installation(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isNewer(Path made, Path source) throws IOException {
        return Files.exists(made) && Files.getLastModifiedTime(made).compareTo(Files.getLastModifiedTime(source)) > 0;
    }

    private static void extract(Path folder) {
        List<String> command = new ArrayList<>(quickJava());
        command.addAll(List.of("-Djarmode=tools", "-jar", jar().toString(), "extract", "--force"));
        command.addAll(List.of("--destination", folder.toString(), "--application-filename", JAR));
        run(command, BUILD);
    }

    private static void train(Path folder) throws IOException {
        Files.deleteIfExists(folder.resolve(ARCHIVE));
        List<String> command = new ArrayList<>(quickJava());
        command.addAll(List.of("-XX:ArchiveClassesAtExit=" + ARCHIVE, "-Dspring.context.exit=onRefresh", "-jar", JAR));
        command.addAll(List.of("--spring.datasource.url=jdbc:h2:mem:training", "--server.port=0"));
        run(command, folder);
    }

    /** Java as quick to start as it can be, which is what the tests do most. */
    private static List<String> quickJava() {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return List.of(java.toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
    }

    private static void run(List<String> command, Path folder) {
        Ended ended = StudioProcess.start(command, folder, Map.of()).waitForEnd(LONGEST_TRAINING);
        if (ended.exitCode() != 0) {
            throw new IllegalStateException(command + " ended with " + ended.exitCode() + ":\n" + ended.console());
        }
    }
}
