package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Backup and restore by the commands that the manual gives. */
class RestoreIT {

    @TempDir
    Path folder;

    @Test
    void bringsAStudioToAnotherFolderAndRefusesWhatItMust() throws IOException {
        Path backup = folder.resolve("backup.jsonl.gz");
        Path home = folder.resolve("home");
        JsonNode before = fillAndBackUp(home, backup);
        Path elsewhere = folder.resolve("elsewhere");

        try (PackagedStudio restored = restoring(backup, elsewhere).andWait()) {
            // Whoever could sign in before can now, with the same password.
            StudioApi api = StudioApi.asLead(restored);
            assertThat(api.read("/api/v1/packages?size=500")).isEqualTo(before);
            assertThat(api.read("/api/v1/activity/verification").get("whole").asBoolean())
                    .isTrue();
            assertThat(api.read("/api/v1/activity").get("total").asInt()).isGreaterThan(60);
            assertThat(restored.console()).contains("rows were restored from " + backup);
            api.made("/api/v1/packages", StudioApi.packageJson("restored", "after"));
            restored.stop();
        }

        Ended again = restoring(backup, elsewhere).toTheEnd();
        assertRefused(again, "restored into an empty studio only", "leave out --stancebook.restore");

        byte[] bytes = Files.readAllBytes(backup);
        bytes[bytes.length / 2] ^= 1;
        Files.write(backup, bytes);
        Path third = folder.resolve("third");
        assertRefused(restoring(backup, third).toTheEnd(), "cannot be used", "an older backup");
        assertThat(third).doesNotExist();
    }

    private static JsonNode fillAndBackUp(Path home, Path backup) throws IOException {
        try (PackagedStudio studio = PackagedStudio.in(home).andWait()) {
            StudioApi api = StudioApi.asLead(studio);
            api.addSegment("restored");
            for (int i = 0; i < 60; i++) {
                api.made("/api/v1/packages", StudioApi.packageJson("restored", "package " + i));
            }
            HttpResponse<byte[]> answer = api.postForBytes("/api/v1/backups");
            assertThat(answer.statusCode()).isEqualTo(200);
            Files.write(backup, answer.body());
            return api.read("/api/v1/packages?size=500");
        }
    }

    private static PackagedStudio.Start restoring(Path backup, Path data) {
        return PackagedStudio.in(data).argument("--stancebook.restore=" + backup);
    }

    private static void assertRefused(Ended ended, String sentence, String whatToDo) {
        assertThat(ended.console()).contains(sentence).contains(whatToDo).doesNotContain("\tat ");
        assertThat(ended.exitCode()).isNotZero();
    }
}
