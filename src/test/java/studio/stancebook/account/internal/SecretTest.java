package studio.stancebook.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SecretTest {

    @Test
    void drawsKeysOf256BitsThatDiffer() {
        assertThat(Base64.getUrlDecoder().decode(Secret.key())).hasSize(32);
        assertThat(Stream.generate(Secret::key).limit(1000).distinct()).hasSize(1000);
    }

    @Test
    void drawsReadablePasswordsThatTheRulesAccept() {
        assertThat(Stream.generate(Secret::readable).limit(200))
                .allMatch(password -> password.matches("([a-z]{4}-){3}[a-z]{4}"))
                .allMatch(password -> PasswordRules.objection(password).isEmpty())
                .doesNotHaveDuplicates();
    }
}
