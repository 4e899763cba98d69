package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The activity record is verified by the command that the manual gives. */
class VerifyRecordIT {

    @TempDir
    Path data;

    @Test
    void tellsAWholeRecordFromOneOfWhichALineWasChanged() throws SQLException {
        String lastHash = fill();

        Ended whole = verify("--stancebook.verify-record");
        assertThat(whole.console()).contains("The activity record is whole: ", lastHash);
        assertThat(whole.exitCode()).isZero();

        tamper(3);

        Ended broken = verify("--stancebook.verify-record=true");
        assertThat(broken.console())
                .contains("The activity record is broken at line 3: it is not as it was written.")
                .doesNotContain("\tat ", "Tomcat started");
        assertThat(broken.exitCode()).isEqualTo(1);
    }

    @Test
    void saysWhatItTakes() {
        Ended refused = verify("--stancebook.verify-record=yes");

        assertThat(refused.console())
                .contains("takes true or false, not \"yes\"")
                .doesNotContain("\tat ");
        assertThat(refused.exitCode()).isNotZero();
    }

    /** Leaves some lines, and gives the hash of the last one. */
    private String fill() {
        try (PackagedStudio studio = PackagedStudio.in(data).andWait()) {
            StudioApi api = StudioApi.asLead(studio);
            api.addSegment("verified");
            for (int i = 0; i < 5; i++) {
                api.made("/api/v1/packages", StudioApi.packageJson("verified", "package " + i));
            }
            JsonNode verification = api.read("/api/v1/activity/verification");
            assertThat(verification.get("whole").asBoolean()).isTrue();
            assertThat(verification.get("lines").asLong()).isGreaterThan(6);
            studio.stop();
            return verification.get("lastHash").asString();
        }
    }

    private Ended verify(String argument) {
        return PackagedStudio.in(data).argument(argument).toTheEnd();
    }

    private void tamper(long line) throws SQLException {
        try (Connection database = DriverManager.getConnection("jdbc:h2:file:" + data.resolve("stancebook"), "sa", "");
                PreparedStatement change =
                        database.prepareStatement("UPDATE activity_line SET title = 'Another' WHERE number = ?")) {
            change.setLong(1, line);
            assertThat(change.executeUpdate()).isEqualTo(1);
        }
    }
}
