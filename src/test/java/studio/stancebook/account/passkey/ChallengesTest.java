package studio.stancebook.account.passkey;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import studio.stancebook.TestClock;

class ChallengesTest {

    private final TestClock clock = new TestClock();
    private final Challenges challenges = new Challenges(clock);
    private final PublicKeyCredentialRequestOptions asked = PublicKeyCredentialRequestOptions.builder()
            .challenge(Bytes.random())
            .rpId("studio.example")
            .build();

    @Test
    void areTakenOnce() {
        Cookie cookie = keep("192.0.2.1");

        assertThat(take("192.0.2.1", cookie)).containsSame(asked);
        assertThat(take("192.0.2.1", cookie)).isEmpty();
    }

    @Test
    void areTakenWithTheirCookieFromTheSameMachine() {
        Cookie cookie = keep("192.0.2.1");

        assertThat(take("192.0.2.2", cookie)).isEmpty();
        assertThat(take("192.0.2.1", new Cookie(Challenges.COOKIE, "made-up"))).isEmpty();
        assertThat(challenges.take(from("192.0.2.1"), new MockHttpServletResponse()))
                .isEmpty();
        assertThat(take("192.0.2.1", cookie)).isPresent();
    }

    @Test
    void lastFiveMinutes() {
        Cookie first = keep("192.0.2.1");
        Cookie second = keep("192.0.2.1");

        clock.move(Duration.ofSeconds(299));
        assertThat(take("192.0.2.1", first)).isPresent();
        clock.move(Duration.ofSeconds(1));
        assertThat(take("192.0.2.1", second)).isEmpty();
    }

    @Test
    void driveOutThoseOfTheSameMachineAlone() {
        Cookie elsewhere = keep("192.0.2.2");
        Cookie oldest = keep("192.0.2.1");
        Cookie next = keep("192.0.2.1");
        for (int i = 1; i < Challenges.PER_MACHINE; i++) {
            keep("192.0.2.1");
        }

        assertThat(take("192.0.2.1", oldest)).isEmpty();
        assertThat(take("192.0.2.1", next)).isPresent();
        assertThat(take("192.0.2.2", elsewhere)).isPresent();
    }

    @Test
    void areInACookieThatNobodyElseSends() {
        MockHttpServletResponse response = new MockHttpServletResponse();
        MockHttpServletRequest request = from("192.0.2.1");
        request.setSecure(true);
        challenges.keep(asked, request, response);

        assertThat(response.getHeader("Set-Cookie"))
                .contains("HttpOnly")
                .contains("Secure")
                .contains("SameSite=Lax")
                .doesNotContain(asked.getChallenge().toBase64UrlString());
    }

    private Cookie keep(String machine) {
        MockHttpServletResponse response = new MockHttpServletResponse();
        challenges.keep(asked, from(machine), response);
        return Objects.requireNonNull(response.getCookie(Challenges.COOKIE));
    }

    private Optional<PublicKeyCredentialRequestOptions> take(String machine, Cookie cookie) {
        MockHttpServletRequest request = from(machine);
        request.setCookies(cookie);
        return challenges.take(request, new MockHttpServletResponse());
    }

    private static MockHttpServletRequest from(String machine) {
        MockHttpServletRequest request = new MockHttpServletRequest();
        request.setRemoteAddr(machine);
        return request;
    }
}
