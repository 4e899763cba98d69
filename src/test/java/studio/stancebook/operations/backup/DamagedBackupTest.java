package studio.stancebook.operations.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A backup that is not what was written is refused, wherever it was changed. */
class DamagedBackupTest {

    /**
     * Bytes of a gzip file that may change without changing the content (RFC 1952, 2.3.1, and RFC 1951): flags, time and
     * operating system in its header, and the unused bits of the last byte of compressed data.
     */
    private static final int WITHOUT_MEANING = 11;

    private static final String CONTENT = """
            {"stancebookBackup":1,"schema":"006","program":"1.0","madeAt":"2026-11-25T10:00:00Z"}
            {"table":"person","columns":{"id":"whole","name":"text"}}
            [1,"Maren"]
            [2,"Idris"]
            {"end":"person","rows":2}
            {"counter":"person","column":"id","next":3}
            """;

    @TempDir
    Path folder;

    @Test
    void isAcceptedAsItWasWritten() throws Exception {
        BackupFile backup = check(zipped(CONTENT + sum(CONTENT)));

        assertThat(backup.rows()).isEqualTo(2);
        assertThat(backup.heading().schema()).isEqualTo("006");
        assertThat(backup.counters()).containsExactly(new Counter("person", "id", 3));
    }

    @Test
    void isRefusedWithAnyByteChanged() throws Exception {
        byte[] whole = zipped(CONTENT + sum(CONTENT));
        int accepted = 0;
        for (int i = 0; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= 0x10;
            if (hasSameContent(changed)) {
                accepted++;
            } else {
                assertThatThrownBy(() -> check(changed)).as("byte %d", i).isInstanceOf(DamagedBackup.class);
            }
        }
        assertThat(accepted).isLessThanOrEqualTo(WITHOUT_MEANING);
    }

    private static boolean hasSameContent(byte[] zipped) {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(zipped))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).equals(CONTENT + sum(CONTENT));
        } catch (Exception unreadable) {
            return false;
        }
    }

    @Test
    void isRefusedCutOffAnywhere() throws Exception {
        byte[] whole = zipped(CONTENT + sum(CONTENT));
        for (int length = 0; length < whole.length; length++) {
            byte[] part = java.util.Arrays.copyOf(whole, length);
            assertThatThrownBy(() -> check(part)).as("%d bytes", length).isInstanceOf(DamagedBackup.class);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Maren | Morena",
                "\"rows\":2 | \"rows\":3",
            })
    void isRefusedWithAnotherContentAndTheOldSum(String old, String other) throws Exception {
        byte[] changed = zipped(CONTENT.replace(old, other) + sum(CONTENT));

        assertThatThrownBy(() -> check(changed)).isInstanceOf(DamagedBackup.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[2,\"Idris\"]~ | '' | rows are missing",
                "\"stancebookBackup\":1 | \"stancebookBackup\":2 | it has format 2",
                "\"stancebookBackup\":1 | \"other\":1 | it is no backup",
                "\"id\":\"whole\" | \"id\":\"matrix\" | unknown kind",
                "[2,\"Idris\"] | [2] | belongs to no table",
                "[2,\"Idris\"] | {\"odd\":1} | unknown kind",
                "[2,\"Idris\"] | [2, | cannot be read",
                "2026-11-25T10:00:00Z | yesterday | cannot be read",
            })
    void isRefusedWhenItContradictsItself(String old, String other, String reason) throws Exception {
        String content = CONTENT.replace(old.replace("~", "\n"), other);

        assertThatThrownBy(() -> check(zipped(content + sum(content))))
                .isInstanceOf(DamagedBackup.class)
                .hasMessageContaining(reason);
    }

    @Test
    void isRefusedWithMoreAfterItsEnd() {
        assertThatThrownBy(() -> check(zipped(CONTENT + sum(CONTENT) + "[3,\"Odile\"]\n")))
                .isInstanceOf(DamagedBackup.class)
                .hasMessageContaining("after its end");
    }

    @Test
    void isRefusedWhenItIsSomethingElse() {
        assertThatThrownBy(() -> check("plain text".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(DamagedBackup.class);
    }

    private BackupFile check(byte[] bytes) throws IOException {
        Path file = folder.resolve("backup.jsonl.gz");
        Files.write(file, bytes);
        return BackupFile.check(file);
    }

    private static String sum(String content) throws Exception {
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
        return "{\"sha256\":\"" + HexFormat.of().formatHex(sum) + "\"}\n";
    }

    private static byte[] zipped(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
