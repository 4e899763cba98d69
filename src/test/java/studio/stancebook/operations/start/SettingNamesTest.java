package studio.stancebook.operations.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.core.env.SystemEnvironmentPropertySource;
import studio.stancebook.problem.CannotStart;

class SettingNamesTest {

    private static final Pattern NAMED = Pattern.compile("STANCEBOOK_[A-Z_]+[A-Z]");

    @ParameterizedTest
    @CsvSource({
        "STANCEBOOK_PROT, STANCEBOOK_PORT",
        "STANCEBOOK_ADRESS, STANCEBOOK_ADDRESS",
        "STANCEBOOK_DATABASE_URL, STANCEBOOK_DB_URL",
        "STANCEBOOK_DB_PASSWROD, STANCEBOOK_DB_PASSWORD",
        "STANCEBOOK_ADMIN_MAIL, STANCEBOOK_ADMIN_EMAIL",
        "stancebook_dta, STANCEBOOK_DATA"
    })
    void tellsOfAMisspeltOneWithTheNearest(String typed, String meant) {
        CannotStart refusal = catchThrowableOfType(CannotStart.class, () -> check(typed));

        assertThat(refusal).hasMessage("There is no setting " + typed + ".");
        assertThat(refusal.whatToDo()).contains(meant + ".");
    }

    @ParameterizedTest
    @FieldSource("studio.stancebook.operations.start.SettingNames#KNOWN")
    @ValueSource(
            strings = {
                "STANCEBOOK_STUDIONAME",
                "STANCEBOOK_SERVICE_HOST",
                "STANCEBOOK_SERVICE_PORT_HTTP",
                "STANCEBOOK_PORT_8080_TCP_ADDR",
                "STANCEBOOKS",
                "PATH"
            })
    void passesWhatThereIsAndWhatIsNotOurs(String name) {
        assertThatCode(() -> check(name)).doesNotThrowAnyException();
    }

    /** Levenshtein's own measure; the first is the example that textbooks give (from memory). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "PORT, PROT, 2", "A, A, 0", "'', ABC, 3", "ABC, '', 3"})
    void countsLettersToChange(String one, String other, int letters) {
        assertThat(SettingNames.distance(one, other)).isEqualTo(letters);
    }

    /** The manual has all of them and no others. */
    @Test
    void areThoseOfTheManual() throws IOException {
        String manual = Files.readString(Path.of("docs/operations.md"));
        String table = manual.substring(manual.indexOf("## Settings"), manual.indexOf("## What the server sends"));

        List<String> named =
                NAMED.matcher(table).results().map(MatchResult::group).toList();

        assertThat(new TreeSet<>(named)).isEqualTo(new TreeSet<>(SettingNames.KNOWN));
    }

    private static void check(String variable) {
        StandardEnvironment environment = new StandardEnvironment();
        environment.getPropertySources().remove(StandardEnvironment.SYSTEM_ENVIRONMENT_PROPERTY_SOURCE_NAME);
        environment
                .getPropertySources()
                .addLast(new SystemEnvironmentPropertySource("systemEnvironment", Map.of(variable, "anything")));
        new SettingNames().check(environment);
    }
}
