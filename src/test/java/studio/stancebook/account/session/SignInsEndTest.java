package studio.stancebook.account.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.MapSession;
import studio.stancebook.TestClock;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.SignInEvents;

/** A session lasts a day at most, however often it is used, and stays with TLS or without. */
class SignInsEndTest {

    private final TestClock clock = new TestClock();

    @SuppressWarnings("unchecked")
    private final SignIns signIns = new SignIns(
            (FindByIndexNameSessionRepository<MapSession>) mock(FindByIndexNameSessionRepository.class),
            clock,
            mock(SignInEvents.class));

    private final MockHttpServletRequest request = new MockHttpServletRequest();

    @Test
    void comesADayAfterSigningIn() {
        signIn();

        clock.move(Duration.ofHours(24).minusMillis(1));
        assertThat(signIns.isOver(request)).isFalse();
        clock.move(Duration.ofMillis(1));
        assertThat(signIns.isOver(request)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void comesAtOnceWhereASessionIsUsedTheOtherWay(boolean overTls) {
        request.setSecure(overTls);
        signIn();
        assertThat(signIns.isOver(request)).isFalse();

        request.setSecure(!overTls);

        assertThat(signIns.isOver(request)).isTrue();
    }

    @Test
    void doesNotComeToWhoeverHasNoSession() {
        assertThat(signIns.isOver(request)).isFalse();
    }

    private void signIn() {
        signIns.begin(new SignedIn(7, "Ada Test", "ada@studio.example", Role.VIEWER), "password", request);
    }
}
