package studio.stancebook.problem;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** More requests than allowed in the time. */
public class TooMany extends Refusal {

    private final @Nullable Duration wait;

    public TooMany(String message) {
        super(ProblemType.TOO_MANY, message);
        this.wait = null;
    }

    /** @param wait after which the same may be tried again */
    public TooMany(String message, Duration wait) {
        super(ProblemType.TOO_MANY, message);
        this.wait = wait;
    }

    /** The value of the header {@code Retry-After}: whole seconds, at least one; empty if it is not known. */
    public Optional<String> retryAfter() {
        return Optional.ofNullable(wait)
                .map(time -> String.valueOf(Math.max(1, time.plusMillis(999).toSeconds())));
    }
}
