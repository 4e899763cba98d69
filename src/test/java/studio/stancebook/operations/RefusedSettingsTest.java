package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import studio.stancebook.Stancebook;

/** Each wrong setting stops the start with a sentence that names it and says what to do. */
@ExtendWith(OutputCaptureExtension.class)
class RefusedSettingsTest {

    private static final String DATABASE = "--spring.datasource.url=";
    private static final String IN_MEMORY = DATABASE + "jdbc:h2:mem:" + UUID.randomUUID();

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--server.port=eighty | STANCEBOOK_PORT) takes a number, not \"eighty\" | leave it out",
                "--server.port=65536 | server.port (STANCEBOOK_PORT) takes a whole number from 1 to 65535 | leave it out",
                "--server.port=-1 | server.port (STANCEBOOK_PORT) takes a whole number from 1 to 65535 | leave it out",
                "--server.port=tcp://10.0.0.1:8080 | takes a number, not \"tcp://10.0.0.1:8080\" | STANCEBOOK_PORT",
                "--server.address=192.0.2.1 | (STANCEBOOK_ADDRESS) takes an address of this machine | not \"192.0.2.1\"",
                "--server.address=no.such.host.invalid | STANCEBOOK_ADDRESS) takes an address of this machine | leave it out",
                "--server.port=0 --spring.datasource.url=jdbc:mysql://db/studio | is no database that can be used here | STANCEBOOK_DB_URL",
                "--server.port=0 --spring.datasource.url=postgres://me:secret@db/studio | \"postgres://me:…@db/studio\" | STANCEBOOK_DB_URL",
                "--spring.profiles.active=dmeo | There is no profile \"dmeo\" | demo",
                "--stancebook.passwords.bcrypt-strength=high | STANCEBOOK_PASSWORDS_BCRYPT_STRENGTH) takes a number, not \"high\" | leave it out",
                "--stancebook.passwords.bcrypt-strength=99 | stancebook.passwords.bcrypt-strength | 4 to 31",
                "--stancebook.log-format=xml | There is no log format \"xml\" | logstash",
                "--stancebook.metrics.token=short | stancebook.metrics.token (STANCEBOOK_METRICS_TOKEN) takes at least 20 characters | leave it out",
                "--stancebook.room.reserve=plenty | STANCEBOOK_ROOM_RESERVE) takes a size such as 64MB, not \"plenty\" | leave it out",
                "--stancebook.pasword.bcrypt-strength=12 | There is no setting stancebook.pasword.bcrypt-strength | STANCEBOOK_PASSWORDS_BCRYPT_STRENGTH",
                "--server.forward-headers-strategy=framework | (SERVER_FORWARD_HEADERS_STRATEGY) is \"framework\" | STANCEBOOK_TRUSTED_PROXIES",
                "--stancebook.public-url=https://studio.example/x | (STANCEBOOK_PUBLIC_URL) takes an address such as | leave it out",
                "--stancebook.trusted-proxies=10.0.0.0/99 | (STANCEBOOK_TRUSTED_PROXIES) takes addresses and networks | leave it out",
                "--stancebook.limits.requests-per-address=0 | stancebook.limits.requests-per-address takes a whole number from 1 | leave it out",
                "--stancebook.limits.timeout=soon | STANCEBOOK_LIMITS_TIMEOUT) takes a time such as 30s or 5m, not \"soon\" | leave it out",
                "--stancebook.studio-name= | stancebook.studio-name is blank | leave it out",
            })
    void areToldWithWhatToDo(String setting, String sentence, String whatToDo, CapturedOutput output) {
        refuse(setting.contains(DATABASE) ? setting.split(" ") : new String[] {setting, IN_MEMORY});

        assertThat(told(output)).contains(sentence).contains(whatToDo).doesNotContain("\tat ");
    }

    @Test
    void sayThatTheDatabaseServerIsNotThere(CapturedOutput output) {
        refuse(DATABASE + "jdbc:postgresql://127.0.0.1:1/studio?password=secret");

        assertThat(told(output))
                .contains("The database jdbc:postgresql://127.0.0.1:1/studio?password=… cannot be reached.")
                .contains("STANCEBOOK_DB_URL");
    }

    @Test
    void sayThatTheDataFolderIsAFile(CapturedOutput output) throws IOException {
        Path file = Files.createFile(folder.resolve("data"));

        refuse("--stancebook.data=" + file);

        assertThat(told(output)).contains(file + " is not a folder").contains("STANCEBOOK_DATA");
    }

    @Test
    void sayThatThePasswordOfTheDatabaseIsWrong(CapturedOutput output) throws SQLException {
        String database = "jdbc:h2:mem:" + UUID.randomUUID();
        try (Connection made = DriverManager.getConnection(database, "owner", "right")) {
            assertThat(made.isValid(1)).isTrue();
            refuse(DATABASE + database, "--spring.datasource.username=owner", "--spring.datasource.password=wrong");
        }

        assertThat(told(output)).contains("refuses the user or the password").contains("STANCEBOOK_DB_PASSWORD");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--stancebook.admin.email=lead@studio.example | only one of them is set",
                "--stancebook.admin.email=lead@studio.example --stancebook.admin.password=short | at least 12 characters",
                "--stancebook.admin.email=nowhere --stancebook.admin.password=long-enough-for-all | not an e-mail address",
            })
    void nameWhatIsWrongWithTheFirstLead(String settings, String sentence, CapturedOutput output) {
        List<String> arguments = new ArrayList<>(List.of(settings.split(" ")));
        arguments.add(DATABASE + "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        arguments.add("--server.port=0");

        refuse(arguments.toArray(String[]::new));

        assertThat(told(output))
                .contains(sentence)
                .contains("a link on the console")
                .doesNotContain("\tat ");
    }

    private static void refuse(String... arguments) {
        SpringApplication application = new SpringApplication(Stancebook.class);
        application.addInitializers(new StartUp());

        assertThat(catchThrowable(() -> application.run(arguments))).isNotNull();
    }

    /** The report of the failed start, which is the last that the console shows. */
    private static String told(CapturedOutput output) {
        String all = output.getAll();
        return all.substring(all.indexOf("APPLICATION FAILED TO START"));
    }
}
