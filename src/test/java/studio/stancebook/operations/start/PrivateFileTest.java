package studio.stancebook.operations.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.env.MockEnvironment;

/** The database file of a first start, and its folder. */
class PrivateFileTest {

    @TempDir
    Path folder;

    private static String rights(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    @Test
    void isReadByTheOwnerAlone() throws IOException {
        Path data = folder.resolve("data");
        MockEnvironment environment = new MockEnvironment()
                .withProperty("spring.datasource.url", "jdbc:h2:file:" + data.resolve("stancebook"))
                .withProperty("spring.datasource.username", "sa");

        new FolderCheck().check(environment);
        new DatabaseCheck().check(environment);

        assertThat(rights(data)).isEqualTo("rwx------");
        assertThat(rights(data.resolve("stancebook.mv.db"))).isEqualTo("rw-------");
    }

    @Test
    void leavesTheRightsOfAFolderThatWasThere() throws IOException {
        Path data = Files.createDirectory(folder.resolve("shared"));
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwxr-x---"));

        new FolderCheck()
                .check(new MockEnvironment()
                        .withProperty("spring.datasource.url", "jdbc:h2:file:" + data.resolve("stancebook")));

        assertThat(rights(data)).isEqualTo("rwxr-x---");
    }
}
