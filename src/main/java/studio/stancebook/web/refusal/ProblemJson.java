package studio.stancebook.web.refusal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.FieldError;

/**
 * The members of a problem as RFC 9457 names them, and three of our own.
 *
 * @param type a reference to what kind of problem it is, relative to this server
 * @param errors our own: the first fields at fault, left out when there are none
 * @param errorCount our own: how many fields are at fault, left out when there are none
 * @param requestId our own: what to quote when asking the people who run the server; left out if the request was refused
 *     before it had one
 */
record ProblemJson(
        String type,
        String title,
        int status,
        String detail,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FieldError> errors,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) int errorCount,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String requestId) {

    static ProblemJson of(Problem problem, @Nullable String requestId) {
        return new ProblemJson(
                "/problems/" + problem.type().slug(),
                problem.type().title(),
                problem.status(),
                problem.detail(),
                problem.errors(),
                problem.errorCount(),
                requestId);
    }
}
