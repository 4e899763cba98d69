package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.core.authority.FactorGrantedAuthority.PASSWORD_AUTHORITY;
import static org.springframework.security.core.authority.FactorGrantedAuthority.WEBAUTHN_AUTHORITY;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import studio.stancebook.TestClock;

class FreshProofTest {

    private final TestClock clock = new TestClock();

    @ParameterizedTest
    @ValueSource(strings = {PASSWORD_AUTHORITY, WEBAUTHN_AUTHORITY})
    void isGivenByAnyProofOfTheLastTenMinutes(String factor) {
        Authentication who = provenBy(factor);

        clock.move(Duration.ofMinutes(10).minusMillis(1));
        assertThat(isFresh(who)).isTrue();
        clock.move(Duration.ofMillis(2));
        assertThat(isFresh(who)).isFalse();
    }

    @Test
    void isNotGivenByBeingSignedInAlone() {
        assertThat(isFresh(new TestingAuthenticationToken("somebody", null, "SCOPE")))
                .isFalse();
    }

    private Authentication provenBy(String factor) {
        return new TestingAuthenticationToken(
                "somebody",
                null,
                List.of(FactorGrantedAuthority.withAuthority(factor)
                        .issuedAt(clock.instant())
                        .build()));
    }

    private boolean isFresh(Authentication who) {
        return FreshProof.given(clock).authorize(() -> who, new Object()).isGranted();
    }
}
