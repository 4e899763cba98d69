package studio.stancebook.web.refusal;

import java.util.Arrays;
import java.util.List;
import org.springframework.http.HttpHeaders;
import studio.stancebook.problem.ProblemType;

/** Problems of which only the HTTP status is known. */
final class Statuses {

    private Statuses() {}

    static Problem problem(int status, HttpHeaders headers) {
        ProblemType type = type(status);
        return new Problem(type, status, sentence(type), List.of(), 0, headers);
    }

    /** The type with this status; for a status without one, that of its class: 400 or 500. */
    static ProblemType type(int status) {
        return Arrays.stream(ProblemType.values())
                .filter(type -> type.status() == status)
                .findFirst()
                .orElse(status < 500 ? ProblemType.MALFORMED : ProblemType.INTERNAL);
    }

    private static String sentence(ProblemType type) {
        return switch (type) {
            case INTERNAL ->
                "This is our fault, not yours. Try again; if it stays, tell whoever runs this server the request id.";
            case UNAVAILABLE -> "Try again shortly.";
            case NO_ROOM -> "Tell whoever runs this server that its disk is full.";
            case UNAUTHENTICATED -> "Sign in and try again.";
            case FORBIDDEN -> Words.notAllowed(null);
            case NOT_FOUND -> "There is nothing at this address.";
            case TOO_LARGE -> "More was sent than is accepted.";
            case TOO_MANY -> "Wait a little and try again.";
            default -> type.title() + ".";
        };
    }
}
