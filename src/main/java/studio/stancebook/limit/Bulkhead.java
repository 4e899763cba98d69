package studio.stancebook.limit;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.stereotype.Component;
import studio.stancebook.problem.TooMany;

/**
 * The places for reads that take a processor for seconds, such as exports: {@value #PLACES} at once in this server, and
 * {@value #PLACES_FOR_ONE} of one person. Somebody who has fewer waits for a moment; the number of those who wait is limited
 * as well, because each of them holds a thread.
 */
@Component
public class Bulkhead {

    static final int PLACES = 4;
    static final int PLACES_FOR_ONE = 2;
    private static final int MOST_WAITING = 8;
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final Duration RETRY_AFTER = Duration.ofSeconds(30);

    private final Semaphore places = new Semaphore(PLACES, true);
    private final Semaphore admitted = new Semaphore(PLACES + MOST_WAITING);
    private final Map<Long, Integer> ofPeople = new ConcurrentHashMap<>();

    /** A place that was taken; closing it gives it back. */
    public final class Place implements AutoCloseable {

        private final long personId;

        private Place(long personId) {
            this.personId = personId;
        }

        @Override
        public void close() {
            places.release();
            leave(personId);
        }
    }

    /**
     * Takes a place.
     *
     * @throws TooMany if the person has as many as one may have, or if none becomes free in time
     */
    public Place take(long personId) {
        enter(personId);
        boolean taken = false;
        try {
            taken = places.tryAcquire(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
            if (!taken) {
                throw busy();
            }
            return new Place(personId);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw busy();
        } finally {
            if (!taken) {
                leave(personId);
            }
        }
    }

    private void enter(long personId) {
        if (ofPeople.merge(personId, 1, Integer::sum) > PLACES_FOR_ONE) {
            forget(personId);
            throw busy();
        }
        if (!admitted.tryAcquire()) {
            forget(personId);
            throw busy();
        }
    }

    private void leave(long personId) {
        admitted.release();
        forget(personId);
    }

    private void forget(long personId) {
        ofPeople.computeIfPresent(personId, (person, n) -> n == 1 ? null : n - 1);
    }

    private static TooMany busy() {
        return new TooMany("The server is busy with other exports. Try again in a minute.", RETRY_AFTER);
    }
}
