package studio.stancebook.exchange.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder below the data folder for files that this server needs for a while. Nobody else on the machine may read it, and
 * what is in it when the server starts was left behind by one that ended hard.
 */
public final class OwnFolder {

    private static final Set<PosixFilePermission> OWNER = EnumSet.of(
            PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE, PosixFilePermission.OWNER_EXECUTE);

    private final Path folder;

    public OwnFolder(Path folder) {
        this.folder = folder.toAbsolutePath();
    }

    /** Where it is; it may not be there yet. */
    public Path path() {
        return folder;
    }

    /** Deletes every file in it. */
    public void sweep() {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("The folder " + folder + " could not be swept", failure);
        }
    }

    /** A new file, which its maker deletes; only the owner may read it, as Java makes temporary files. */
    public Path newFile(String prefix, String suffix) throws IOException {
        make();
        return Files.createTempFile(folder, prefix, suffix);
    }

    /** Makes the folder if it is not there. */
    public void make() throws IOException {
        Files.createDirectories(folder);
        if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(folder, OWNER);
        }
    }
}
