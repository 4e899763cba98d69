package studio.stancebook.exchange.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;
import studio.stancebook.problem.Malformed;

/** The folder for files that were sent; each gets a name of its own there. */
@Component
class ReceivedFiles {

    private final Path folder;

    ReceivedFiles(@Value("${stancebook.data}") String data) {
        folder = Path.of(data, "uploads").toAbsolutePath();
    }

    /** Keeps a file that was sent; whoever asked deletes it. */
    Path keep(MultipartFile sent) {
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
    static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException failure) {
            throw new UncheckedIOException("A file that was sent could not be deleted", failure);
        }
    }
}
