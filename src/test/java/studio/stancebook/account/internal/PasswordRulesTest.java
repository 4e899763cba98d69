package studio.stancebook.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

class PasswordRulesTest {

    @ParameterizedTest
    @ValueSource(strings = {"", "elevenchars", "éééééééééé1", "🚗🚗🚗🚗🚗🚗🚗🚗🚗🚗🚗"})
    void findsFewerThanTwelveCharactersTooShort(String password) {
        assertThat(PasswordRules.objection(password))
                .hasValueSatisfying(why -> assertThat(why).contains("12 characters"));
    }

    @Test
    void acceptsTwelveCharactersOfAnyKind() {
        assertThat(PasswordRules.objection("twelve chars")).isEmpty();
        assertThat(PasswordRules.objection("éééééééééééé")).isEmpty();
    }

    @Test
    void countsBytesAtTheUpperEnd() {
        assertThat(PasswordRules.objection("x".repeat(72))).isEmpty();
        assertThat(PasswordRules.objection("x".repeat(73)))
                .hasValueSatisfying(why -> assertThat(why).contains("72 bytes"));
        assertThat(PasswordRules.objection("é".repeat(36))).isEmpty();
        assertThat(PasswordRules.objection("é".repeat(37))).isPresent();
    }

    @Test
    void letsNothingThroughThatTheHashWouldNotRead() {
        BCryptPasswordEncoder bcrypt = new BCryptPasswordEncoder(4);
        String longest = "x".repeat(71);

        assertThat(bcrypt.matches(longest + "y", bcrypt.encode(longest + "z"))).isFalse();
    }

    @Test
    void objectsWithoutRepeatingThePassword() {
        assertThat(PasswordRules.objection("hunter2"))
                .hasValueSatisfying(why -> assertThat(why).doesNotContain("hunter2"));
        assertThat(PasswordRules.objection("twelve\u0000chars")).isPresent();
        assertThat(PasswordRules.objection(null)).isPresent();
    }
}
