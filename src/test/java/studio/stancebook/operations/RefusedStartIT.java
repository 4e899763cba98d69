package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A start that cannot be ends at once: a sentence and what to do, no stack trace, an exit code, no damage. */
class RefusedStartIT {

    /** Blocks of 1,024 bytes that no file may exceed: too few for a new database. */
    private static final String TOO_FEW_BLOCKS = "8";

    @TempDir
    Path folder;

    @Test
    void whenAnotherProcessHasTheDatabaseOpen() throws IOException {
        try (PackagedStudio first = PackagedStudio.in(folder).andWait()) {
            StudioApi api = StudioApi.asLead(first);
            api.addSegment("before");

            Ended second = PackagedStudio.in(folder).toTheEnd();

            assertRefused(second, "is open in another process", "STANCEBOOK_DATA");
            api.addSegment("after");
            assertThat(api.read("/api/v1/segments").get("total").asInt()).isEqualTo(2);
        }
    }

    @Test
    void whenTheFolderIsReadOnly() throws IOException {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));

        Ended ended = PackagedStudio.in(folder).under(withoutOverridingRights()).toTheEnd();

        assertRefused(ended, "The data folder " + folder + " cannot be written", "STANCEBOOK_DATA");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        assertThat(Files.list(folder)).isEmpty();
    }

    /** The superuser may write anywhere, so that power is taken from the process. */
    private static String[] withoutOverridingRights() {
        boolean superuser = "root".equals(System.getProperty("user.name"));
        return superuser ? new String[] {"setpriv", "--bounding-set=-dac_override"} : new String[0];
    }

    @Test
    void whenTheDemoStudioIsAskedForOfBeansMadeWithoutIt() {
        Ended ended = PackagedStudio.in(folder)
                .with("JDK_JAVA_OPTIONS", "-Dspring.aot.enabled=true")
                .argument("--spring.profiles.active=demo")
                .toTheEnd();

        assertRefused(ended, "The demo studio cannot be had together with spring.aot.enabled", "Leave out");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whenThereIsNoRoomForTheDatabase() {
        Ended ended = PackagedStudio.in(folder)
                .under("bash", "-c", "ulimit -f " + TOO_FEW_BLOCKS + "; exec \"$@\"", "bash")
                .toTheEnd();

        assertRefused(ended, "There is no room left on the disk", "Make room");
    }

    @Test
    void whenTheDatabaseIsDamaged() throws IOException {
        try (PackagedStudio studio = PackagedStudio.in(folder).andWait()) {
            StudioApi.asLead(studio).addSegment("damaged");
            studio.stop();
        }
        Path database = folder.resolve("stancebook.mv.db");
        overwrite(database, 0, 3 * 4096);
        byte[] damaged = Files.readAllBytes(database);
        Set<String> before = namesIn(folder);

        Ended ended = PackagedStudio.in(folder).toTheEnd();

        assertRefused(ended, "The database " + database + " is damaged", "--stancebook.restore=");
        assertThat(Files.readAllBytes(database)).isEqualTo(damaged);
        assertThat(namesIn(folder)).isEqualTo(before);
    }

    @Test
    void whenThePasswordOfTheFirstLeadIsTooShort() {
        Ended ended = PackagedStudio.in(folder)
                .with("STANCEBOOK_ADMIN_PASSWORD", "short")
                .toTheEnd();

        assertRefused(ended, "at least 12 characters", "leave both out");
    }

    private static void assertRefused(Ended ended, String sentence, String whatToDo) {
        assertThat(ended.console()).contains(sentence).contains(whatToDo);
        assertThat(ended.console()).doesNotContain("\tat ").doesNotContain("Caused by");
        assertThat(ended.exitCode()).isNotZero();
    }

    private static void overwrite(Path file, long from, int length) throws IOException {
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.seek(from);
            bytes.write("damage".repeat(length).getBytes(java.nio.charset.StandardCharsets.US_ASCII), 0, length);
        }
    }

    private static Set<String> namesIn(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(java.util.stream.Collectors.toSet());
        }
    }
}
