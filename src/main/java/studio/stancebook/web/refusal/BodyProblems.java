package studio.stancebook.web.refusal;

import java.util.List;
import java.util.Optional;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.http.HttpHeaders;
import studio.stancebook.edge.BodyRefused;

/** What is told about a body that was not read to its end, or a form that cannot be decoded. */
final class BodyProblems {

    private static final String UNREADABLE = "The form cannot be read: a field in it is not encoded as"
            + " application/x-www-form-urlencoded has it, or there are too many fields.";

    private BodyProblems() {}

    /** The refusal of the edge behind an exception, if there is one. */
    static Optional<Problem> in(Throwable failure) {
        return BodyRefused.in(failure).map(BodyProblems::of);
    }

    static Problem of(BodyRefused refused) {
        return problem(refused.status(), refused.detail());
    }

    static Problem of(InvalidParameterException unreadable) {
        return in(unreadable).orElseGet(() -> problem(unreadable.getErrorCode(), UNREADABLE));
    }

    private static Problem problem(int status, String detail) {
        return new Problem(Statuses.type(status), status, detail, List.of(), 0, HttpHeaders.EMPTY);
    }
}
