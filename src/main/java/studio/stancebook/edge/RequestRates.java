package studio.stancebook.edge;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import io.github.bucket4j.Bucket;
import java.time.Duration;

/** How many requests an address may send in a second: a token bucket for each. */
final class RequestRates {

    /** Pages that everybody opens at once, each with all its parts. */
    private static final int SECONDS_AT_ONCE = 4;

    /** A bucket has some 200 bytes; beyond this the one that was used least is forgotten. */
    private static final int MOST_ADDRESSES = 100_000;

    private final LoadingCache<String, Bucket> buckets;

    RequestRates(int perSecond) {
        buckets = Caffeine.newBuilder()
                .maximumSize(MOST_ADDRESSES)
                // A bucket that was not used for so long is full, as a new one is.
                .expireAfterAccess(Duration.ofSeconds(2 * SECONDS_AT_ONCE))
                .build(address -> bucket(perSecond));
    }

    private static Bucket bucket(int perSecond) {
        return Bucket.builder()
                .addLimit(limit -> limit.capacity((long) SECONDS_AT_ONCE * perSecond)
                        .refillGreedy(perSecond, Duration.ofSeconds(1)))
                .build();
    }

    /** Counts a request, unless the address has sent as many as it may. */
    boolean allows(String address) {
        return buckets.get(address).tryConsume(1);
    }
}
