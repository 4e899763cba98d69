package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import studio.stancebook.TestClock;

class WindowCounterTest {

    private static final Duration WINDOW = Duration.ofMinutes(1);

    private final TestClock clock = new TestClock();
    private final WindowCounter counter = new WindowCounter(2, WINDOW, 3, clock);

    @Test
    void countsUpToTheLimit() {
        assertThat(counter.tryAcquire("a")).isTrue();
        assertThat(counter.tryAcquire("a")).isTrue();
        assertThat(counter.tryAcquire("a")).isFalse();

        counter.release("a");

        assertThat(counter.tryAcquire("a")).isTrue();
        assertThat(counter.tryAcquire("a")).isFalse();
    }

    @Test
    void takesNothingBackThatWasNotCounted() {
        counter.release("a");
        counter.tryAcquire("a");
        counter.release("a");
        counter.release("a");

        assertThat(counter.tryAcquire("a")).isTrue();
        assertThat(counter.tryAcquire("a")).isTrue();
        assertThat(counter.tryAcquire("a")).isFalse();
    }

    @Test
    void refusesFurtherKeysWhereThereIsNoRoomRatherThanForgetOne() {
        counter.tryAcquire("victim");
        counter.tryAcquire("victim");
        for (int key = 0; key < 1_000; key++) {
            counter.tryAcquire("key" + key);
        }

        assertThat(counter.size()).isEqualTo(3);
        assertThat(counter.tryAcquire("another")).isFalse();
        assertThat(counter.tryAcquire("key0")).isTrue();
        assertThat(counter.tryAcquire("victim")).isFalse();

        clock.move(WINDOW);

        assertThat(counter.tryAcquire("another")).isTrue();
    }

    @Test
    void tellsHowLongAWindowLasts() {
        assertThat(counter.remaining("a")).isEqualTo(WINDOW);
        counter.tryAcquire("a");
        clock.move(Duration.ofSeconds(20));
        counter.tryAcquire("a");

        assertThat(counter.remaining("a")).isEqualTo(Duration.ofSeconds(40));
    }
}
