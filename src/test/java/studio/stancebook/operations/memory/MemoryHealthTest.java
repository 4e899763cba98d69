package studio.stancebook.operations.memory;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.springframework.boot.health.contributor.Status;

class MemoryHealthTest {

    private final Heap heap = new Heap();
    private Instant now = Instant.parse("2030-01-01T00:00:00Z");
    private final MemoryHealth health = new MemoryHealth(heap, new Clock() {
        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }
    });

    private static final class Heap implements HeapUse {
        private double share;
        private double live;
        private int collections;

        @Override
        public double afterCollection() {
            return share;
        }

        @Override
        public void collect() {
            collections++;
            share = live;
        }
    }

    @Test
    void isUpAtTheEdgeAndDownAboveIt() {
        heap.share = MemoryHealth.FULL;
        assertThat(health.health().getStatus()).isEqualTo(Status.UP);
        assertThat(heap.collections).isZero();

        heap.share = heap.live = MemoryHealth.FULL + 0.001;
        assertThat(health.health().getStatus()).isEqualTo(Status.DOWN);
    }

    @Test
    void collectsAtMostOnceAMinuteAndIsUpAgainWhenThatHelps() {
        heap.share = heap.live = 0.99;
        health.health();
        health.health();
        assertThat(heap.collections).isEqualTo(1);

        heap.live = 0.5;
        now = now.plus(Duration.ofMinutes(1));

        assertThat(health.health().getStatus()).isEqualTo(Status.UP);
        assertThat(heap.collections).isEqualTo(2);
    }

    /** Of this very process, which cannot have filled its heap and still run this test. */
    @Test
    void measuresTheHeapOfThisProcess() {
        HeapUse real = HeapUse.ofThisProcess();
        real.collect();

        assertThat(real.afterCollection()).isBetween(0.0, MemoryHealth.FULL).isPositive();
    }
}
