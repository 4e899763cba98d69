package studio.stancebook.operations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A Java on this machine to take the steps of the image with: of release 25 or later where there is one. */
record JavaOfTheImage(Path home, int release) {

    private static final int IMAGE_RELEASE = 25;
    private static final Pattern VERSION = Pattern.compile("(?m)^JAVA_VERSION=\"(\\d+)");

    /** Named by {@code JAVA25_HOME}, or beside the Java that runs the tests, or where Linux keeps them; else that one. */
    static JavaOfTheImage find() {
        Path own = Path.of(System.getProperty("java.home"));
        return Stream.of(named(), Stream.of(own), in(own.getParent()), in(Path.of("/usr/lib/jvm")))
                .flatMap(homes -> homes)
                .flatMap(home -> at(home).stream())
                .filter(JavaOfTheImage::isTheImages)
                .findFirst()
                .or(() -> at(own))
                .orElseThrow(() -> new IllegalStateException(own + " has no file named release"));
    }

    boolean isTheImages() {
        return release >= IMAGE_RELEASE;
    }

    /** The option with which Java refuses to start when it cannot use its cache. */
    String cacheOrNothing() {
        return isTheImages() ? "-XX:AOTMode=on" : "-Xshare:on";
    }

    String cache() {
        return isTheImages() ? "stancebook.aot" : "stancebook.jsa";
    }

    private static Stream<Path> named() {
        return Optional.ofNullable(System.getenv("JAVA25_HOME")).map(Path::of).stream();
    }

    private static Stream<Path> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            return Stream.empty();
        }
        try (Stream<Path> homes = Files.list(folder)) {
            return homes.sorted(Comparator.naturalOrder()).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<JavaOfTheImage> at(Path home) {
        try {
            Path file = home.resolve("release");
            if (!Files.isReadable(file) || !Files.isExecutable(home.resolve("bin/java"))) {
                return Optional.empty();
            }
            Matcher version = VERSION.matcher(Files.readString(file));
            return version.find()
                    ? Optional.of(new JavaOfTheImage(home, Integer.parseInt(version.group(1))))
                    : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
