package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import studio.stancebook.TestClock;

class AttemptsTest {

    private static final String ADA = "ada@studio.example";

    private final TestClock clock = new TestClock();
    private final Attempts attempts = new Attempts(clock);

    @Test
    void closesAfterTenFailuresForAQuarterOfAnHour() {
        fail(ADA, "10.0.0.1", 9);
        assertThatCode(() -> attempts.check(ADA, "10.0.0.1")).doesNotThrowAnyException();

        fail(ADA, "10.0.0.1", 1);
        assertThatThrownBy(() -> attempts.check(ADA, "10.0.0.1")).isInstanceOf(TooManyAttempts.class);
        assertThatThrownBy(() -> attempts.check(" ADA@studio.example", "10.0.0.1"))
                .isInstanceOf(TooManyAttempts.class);

        clock.move(Duration.ofMinutes(15).minusMillis(1));
        assertThatThrownBy(() -> attempts.check(ADA, "10.0.0.1")).isInstanceOf(TooManyAttempts.class);
        clock.move(Duration.ofMillis(1));
        assertThatCode(() -> attempts.check(ADA, "10.0.0.1")).doesNotThrowAnyException();
    }

    @Test
    void leavesThePersonTheWayInFromElsewhere() {
        fail(ADA, "10.0.0.1", 50);

        assertThatCode(() -> attempts.check(ADA, "10.0.0.2")).doesNotThrowAnyException();
    }

    @Test
    void closesToAMachineThatTriesManyPeople() {
        for (int person = 0; person < 99; person++) {
            fail("person" + person + "@studio.example", "10.0.0.1", 1);
        }
        assertThatCode(() -> attempts.check(ADA, "10.0.0.1")).doesNotThrowAnyException();

        fail("one more", "10.0.0.1", 1);
        assertThatThrownBy(() -> attempts.check(ADA, "10.0.0.1")).isInstanceOf(TooManyAttempts.class);
    }

    @Test
    void forgetsFailuresOnceThePasswordIsRight() {
        fail(ADA, "10.0.0.1", 9);
        attempts.succeeded(ADA, "10.0.0.1");
        fail(ADA, "10.0.0.1", 9);

        assertThatCode(() -> attempts.check(ADA, "10.0.0.1")).doesNotThrowAnyException();
    }

    private void fail(String email, String machine, int times) {
        for (int i = 0; i < times; i++) {
            attempts.failed(email, machine);
        }
    }
}
