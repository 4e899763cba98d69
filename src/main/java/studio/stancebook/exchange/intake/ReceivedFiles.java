package studio.stancebook.exchange.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;
import studio.stancebook.problem.Malformed;

/** The folder for files that were sent; each gets a name of its own there. */
@Component
public class ReceivedFiles {

    /** Files older than this were left behind by a server that ended hard. */
    private static final Duration OLDEST = Duration.ofDays(1);

    private final Path folder;

    ReceivedFiles(@Value("${stancebook.data}") String data, Clock clock) {
        folder = Path.of(data, "uploads").toAbsolutePath();
        List.of("uploads", "exports")
                .forEach(name -> sweep(Path.of(data, name), clock.instant().minus(OLDEST)));
    }

    /** Deletes what is older than {@code oldest}. */
    static void sweep(Path folder, Instant oldest) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(oldest)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("The folder " + folder + " could not be swept", failure);
        }
    }

    /** Keeps a file that was sent; whoever asked deletes it. */
    public Path keep(MultipartFile sent) {
        if (sent.isEmpty()) {
            throw Malformed.ofField("file", "The file is empty, or none was chosen.");
        }
        try {
            Files.createDirectories(folder);
            Path file = Files.createTempFile(folder, "upload", ".tmp");
            sent.transferTo(file);
            return file;
        } catch (IOException failure) {
            throw new UncheckedIOException("The file that was sent could not be kept", failure);
        }
    }

    /** Deletes a file that is of no more use. */
    public static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException failure) {
            throw new UncheckedIOException("A file that was sent could not be deleted", failure);
        }
    }
}
