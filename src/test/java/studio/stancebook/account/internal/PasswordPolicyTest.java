package studio.stancebook.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.io.ClassPathResource;

/** Source: OWASP ASVS 5.0, 6.2.4 and 6.2.11 (from memory). */
class PasswordPolicyTest {

    private static final String NAME = "Ada Farrow";
    private static final String EMAIL = "ada.farrow@marshlane.example";

    private final PasswordPolicy policy = new PasswordPolicy("Northgate Studio");

    /** Each is among the million most common of the list's source. */
    @ParameterizedTest
    @ValueSource(strings = {"1qaz2wsx3edc", "password1234", "PassWordPassWord", "QWERTYUIOP123", "111111111111"})
    void refusesCommonPasswordsHoweverCapitalised(String password) {
        assertThat(objection(password)).contains("most common").doesNotContain(password);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ada Farrow 2031!",
                "farrow-farrow-farrow",
                "ada.farrow@marshlane",
                "MarshLane1234",
                "northgate studio",
                "Stancebook#2031",
                "stancebookstancebook"
            })
    void refusesWhatIsLittleMoreThanANameThatIsKnown(String password) {
        assertThat(objection(password)).contains("name that is known here").doesNotContain(password);
    }

    @ParameterizedTest
    @CsvSource({"four words of mine", "farrow keeps bees in a hat", "tamo-keri-pulo-dasi", "stancebook needs a long one"
    })
    void acceptsOthers(String password) {
        assertThat(policy.objection(password, NAME, EMAIL)).isEmpty();
    }

    @Test
    void asksForTheLengthFirst() {
        assertThat(objection("stancebook")).contains("12 characters");
        assertThat(policy.objection(null, NAME, EMAIL)).isPresent();
    }

    /** The requirement asks for 3,000 that match the rules for passwords. */
    @Test
    void shipsTenThousandCommonPasswordsThatNothingElseRefuses() throws IOException {
        List<String> common = new ClassPathResource("passwords/common.txt")
                .getContentAsString(StandardCharsets.US_ASCII)
                .lines()
                .toList();

        assertThat(common).hasSize(10_000).doesNotHaveDuplicates().allSatisfy(password -> {
            assertThat(password).isEqualTo(password.toLowerCase(Locale.ROOT));
            assertThat(PasswordRules.objection(password)).isEmpty();
        });
        assertThat(objection(common.get(9_999))).contains("most common");
    }

    private String objection(String password) {
        return policy.objection(password, NAME, EMAIL).orElse("");
    }
}
