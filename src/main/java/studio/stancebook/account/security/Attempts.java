package studio.stancebook.account.security;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.problem.TooMany;

/**
 * Counts wrong passwords of the last quarter of an hour, by address of the person and of the machine together, so that
 * nobody can lock out a person from elsewhere; and by machine alone, for those who try one password on many people.
 *
 * <p>The limits are our choice. The counts are lost when the server stops.
 */
@Component
class Attempts {

    static final int PER_PERSON_AND_MACHINE = 10;
    static final int PER_MACHINE = 100;
    static final Duration WINDOW = Duration.ofMinutes(15);

    private static final int MOST_KEYS = 20_000;

    private final Clock clock;

    /** The moments of the failures under a key, oldest first; the key that failed longest ago is dropped first. */
    private final Map<String, Deque<Instant>> failures = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
            return size() > MOST_KEYS;
        }
    };

    Attempts(Clock clock) {
        this.clock = clock;
    }

    /** @throws TooManyAttempts if a password is not to be looked at now */
    synchronized void check(String email, String machine) {
        if (recent(both(email, machine)) >= PER_PERSON_AND_MACHINE || recent(machine) >= PER_MACHINE) {
            throw new TooManyAttempts(new TooMany(
                    "Too many wrong passwords from here. Wait " + WINDOW.toMinutes() + " minutes, then try again."));
        }
    }

    synchronized void failed(String email, String machine) {
        note(both(email, machine), PER_PERSON_AND_MACHINE);
        note(machine, PER_MACHINE);
    }

    synchronized void succeeded(String email, String machine) {
        failures.remove(both(email, machine));
    }

    private int recent(String key) {
        Deque<Instant> moments = failures.get(key);
        if (moments == null) {
            return 0;
        }
        Instant start = clock.instant().minus(WINDOW);
        moments.removeIf(moment -> !moment.isAfter(start));
        return moments.size();
    }

    private void note(String key, int most) {
        Deque<Instant> moments = failures.computeIfAbsent(key, k -> new ArrayDeque<>());
        moments.addLast(clock.instant());
        if (moments.size() > most) {
            moments.removeFirst();
        }
    }

    private static String both(String email, String machine) {
        return email.strip().toLowerCase(Locale.ROOT) + " " + machine;
    }
}
