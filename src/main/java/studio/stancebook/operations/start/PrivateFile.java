package studio.stancebook.operations.start;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Takes the rights of everybody but the owner from a file or a folder, where the file system knows of rights. */
final class PrivateFile {

    private static final Logger LOG = LoggerFactory.getLogger(PrivateFile.class);

    private PrivateFile() {}

    static void make(Path path) {
        if (!FileSystems.getDefault().supportedFileAttributeViews().contains("posix") || !Files.exists(path)) {
            return;
        }
        try {
            Files.setPosixFilePermissions(
                    path, PosixFilePermissions.fromString(Files.isDirectory(path) ? "rwx------" : "rw-------"));
        } catch (IOException e) {
            LOG.warn("Others on this machine may be able to read {}: {}", path, e.toString());
        }
    }
}
