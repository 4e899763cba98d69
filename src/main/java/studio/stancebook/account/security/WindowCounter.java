package studio.stancebook.account.security;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Counts by key up to a limit, within a window of time that begins with the first count of a key. A key is forgotten at the
 * end of its window. Where there is no room for another key, it is refused: no count ever makes room for another.
 */
final class WindowCounter {

    private final int limit;
    private final int mostKeys;
    private final Duration window;
    private final Cache<String, AtomicInteger> counts;

    WindowCounter(int limit, Duration window, int mostKeys, Clock clock) {
        this.limit = limit;
        this.mostKeys = mostKeys;
        this.window = window;
        this.counts = Caffeine.newBuilder()
                .expireAfterWrite(window)
                .ticker(() -> TimeUnit.MILLISECONDS.toNanos(clock.millis()))
                .build();
    }

    /** Counts one more, unless that would be above the limit. */
    boolean tryAcquire(String key) {
        if (!hasRoomFor(key)) {
            return false;
        }
        AtomicInteger count = counts.get(key, first -> new AtomicInteger());
        return count.getAndUpdate(before -> Math.min(before + 1, limit)) < limit;
    }

    /** Takes one back. */
    void release(String key) {
        AtomicInteger count = counts.getIfPresent(key);
        if (count != null) {
            count.updateAndGet(before -> Math.max(before - 1, 0));
        }
    }

    /** Begins anew with a key. */
    void reset(String key) {
        counts.invalidate(key);
    }

    /** How long the window of a key lasts from now; all of it for a key that is not counted. */
    Duration remaining(String key) {
        return counts.policy()
                .expireAfterWrite()
                .flatMap(expiry -> expiry.ageOf(key, TimeUnit.NANOSECONDS).stream()
                        .mapToObj(age -> window.minusNanos(age))
                        .findFirst())
                .orElse(window);
    }

    /** How many keys are counted now. */
    long size() {
        counts.cleanUp();
        return counts.estimatedSize();
    }

    /** Begins anew with every key. */
    void clear() {
        counts.invalidateAll();
    }

    private boolean hasRoomFor(String key) {
        return counts.estimatedSize() < mostKeys || counts.getIfPresent(key) != null || size() < mostKeys;
    }
}
