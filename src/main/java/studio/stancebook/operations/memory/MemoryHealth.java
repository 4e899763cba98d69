package studio.stancebook.operations.memory;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;

/**
 * Down while hardly any heap is left even after a collection: the server then spends its time on collecting, and whoever
 * spreads requests over several should ask another.
 *
 * <p>Without requests nothing would be collected again, and the server would stay down: so a collection is asked for, at most
 * once a minute.
 */
final class MemoryHealth implements HealthIndicator {

    /** Our choice: with a heap of 512 MB, 25 MB are left. */
    static final double FULL = 0.95;

    static final Duration BETWEEN_COLLECTIONS = Duration.ofMinutes(1);

    private final HeapUse heap;
    private final Clock clock;
    private Instant collected = Instant.EPOCH;

    MemoryHealth(HeapUse heap, Clock clock) {
        this.heap = heap;
        this.clock = clock;
    }

    @Override
    public synchronized Health health() {
        if (isFull() && !clock.instant().isBefore(collected.plus(BETWEEN_COLLECTIONS))) {
            collected = clock.instant();
            heap.collect();
        }
        return isFull() ? Health.down().build() : Health.up().build();
    }

    private boolean isFull() {
        return heap.afterCollection() > FULL;
    }
}
