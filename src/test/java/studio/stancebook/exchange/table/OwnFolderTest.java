package studio.stancebook.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnFolderTest {

    @TempDir
    Path data;

    private static String rights(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    @Test
    void isForTheOwnerAlone() throws IOException {
        OwnFolder folder = new OwnFolder(data.resolve("uploads"));

        Path file = folder.newFile("upload", ".tmp");

        assertThat(rights(folder.path())).isEqualTo("rwx------");
        assertThat(rights(file)).isEqualTo("rw-------");
    }

    @Test
    void isEmptiedOfWhatAServerLeftBehind() throws IOException {
        OwnFolder folder = new OwnFolder(data.resolve("uploads"));
        folder.sweep();
        folder.newFile("upload", ".tmp");

        new OwnFolder(data.resolve("uploads")).sweep();

        try (var left = Files.list(folder.path())) {
            assertThat(left).isEmpty();
        }
    }
}
