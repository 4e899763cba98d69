package studio.stancebook.edge;

import java.util.Optional;

/**
 * The body of a request is not read any further. Not an {@link java.io.IOException}, which the container takes for a client
 * that has gone, to whom nothing can be told.
 */
public final class BodyRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final String detail;

    BodyRefused(int status, String detail) {
        super(detail);
        this.detail = detail;
        this.status = status;
    }

    /** The HTTP status that tells why. */
    public int status() {
        return status;
    }

    /** A sentence for whoever sent it. */
    public String detail() {
        return detail;
    }

    /** The refusal behind an exception of whoever tried to read, if there is one. */
    public static Optional<BodyRefused> in(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof BodyRefused refused) {
                return Optional.of(refused);
            }
        }
        return Optional.empty();
    }
}
