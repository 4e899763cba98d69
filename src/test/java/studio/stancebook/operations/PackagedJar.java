package studio.stancebook.operations;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The jar that the build packaged. */
final class PackagedJar {

    private static final Path BUILD = Path.of("target").toAbsolutePath();

    private PackagedJar() {}

    static Path find() throws IOException {
        try (Stream<Path> files = Files.list(BUILD)) {
            return files.filter(file -> file.getFileName().toString().matches("stancebook-.*\\.jar"))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(
                            "There is no packaged jar in " + BUILD + ": run mvn verify, or mvn package first."));
        }
    }
}
