package studio.stancebook.web.refusal;

import java.util.List;
import org.springframework.http.HttpHeaders;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.TooMany;

/**
 * What is told about a refusal or failure, to programs and people alike.
 *
 * @param status the HTTP status, which may be finer than that of the type
 * @param detail one or more sentences for a person
 * @param errors the first fields at fault; empty when the request as a whole is refused
 * @param errorCount how many there are
 * @param headers that the status calls for, such as Allow
 */
record Problem(
        ProblemType type, int status, String detail, List<FieldError> errors, int errorCount, HttpHeaders headers) {

    Problem {
        errors = List.copyOf(errors);
    }

    static Problem of(ProblemType type, String detail) {
        return of(type, detail, HttpHeaders.EMPTY);
    }

    static Problem of(ProblemType type, String detail, HttpHeaders headers) {
        return new Problem(type, type.status(), detail, List.of(), 0, headers);
    }

    /** A problem of one field, whose message serves for the whole. */
    static Problem ofField(ProblemType type, String field, String message) {
        return of(type, message, ErrorList.of(List.of(new FieldError(field, message))));
    }

    static Problem of(ProblemType type, String detail, ErrorList errors) {
        return new Problem(type, type.status(), detail, errors.listed(), errors.count(), HttpHeaders.EMPTY);
    }

    static Problem of(Refusal refusal) {
        return new Problem(
                refusal.type(),
                refusal.type().status(),
                refusal.detail(),
                refusal.errors(),
                refusal.errorCount(),
                headers(refusal));
    }

    private static HttpHeaders headers(Refusal refusal) {
        HttpHeaders headers = new HttpHeaders();
        if (refusal instanceof TooMany tooMany) {
            tooMany.retryAfter().ifPresent(seconds -> headers.set(HttpHeaders.RETRY_AFTER, seconds));
        }
        return headers;
    }
}
