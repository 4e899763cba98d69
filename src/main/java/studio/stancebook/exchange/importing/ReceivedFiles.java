package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;
import studio.stancebook.exchange.table.OwnFolder;
import studio.stancebook.problem.Malformed;

/** The folder for files that were sent; each gets a name of its own there. */
@Component
public class ReceivedFiles {

    private static final Logger LOG = LoggerFactory.getLogger(ReceivedFiles.class);

    private final OwnFolder folder;

    ReceivedFiles(@Value("${stancebook.data}") String data) {
        folder = new OwnFolder(Path.of(data, "uploads"));
        folder.sweep();
        try {
            folder.make();
        } catch (IOException failure) {
            LOG.warn("{} cannot be made, so no file can be sent: {}", folder.path(), failure.toString());
        }
    }

    /** Where they are, which nobody else on the machine may read. */
    Path folder() {
        return folder.path();
    }

    /** A new file beside those that were sent; whoever asked deletes it. */
    Path newFile(String prefix) {
        try {
            return folder.newFile(prefix, ".tmp");
        } catch (IOException failure) {
            throw new UncheckedIOException("A file could not be made", failure);
        }
    }

    /** Keeps a file that was sent; whoever asked deletes it. */
    public Path keep(MultipartFile sent) {
        if (sent.isEmpty()) {
            throw Malformed.ofField("file", "The file is empty, or none was chosen.");
        }
        try {
            Path file = folder.newFile("upload", ".tmp");
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
