package studio.stancebook.web.refusal;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpHeaders;
import org.springframework.security.web.WebAttributes;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import studio.stancebook.operations.StoreRefusals;
import studio.stancebook.problem.ProblemType;

/** Where the servlet container turns to when a filter or the container itself refused a request. */
@Controller
class ErrorPage implements ErrorController {

    private final ProblemRendering rendering;
    private final StoreRefusals store;

    ErrorPage(ProblemRendering rendering, StoreRefusals store) {
        this.rendering = rendering;
        this.store = store;
    }

    @RequestMapping("${spring.web.error.path:/error}")
    Object show(HttpServletRequest request, HttpServletResponse response) {
        BareHeaders.addIfMissing(response, ProblemRendering.isForApi(request));
        return rendering.render(ofStore(request).orElseGet(() -> problem(request)), request);
    }

    /** Trouble with the store that came up in a filter, before any advice. */
    private Optional<Problem> ofStore(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Throwable failure
                ? store.of(failure).map(Problem::of)
                : Optional.empty();
    }

    private static Problem problem(HttpServletRequest request) {
        if (request.getAttribute(UnreadableForms.PROBLEM) instanceof Problem problem) {
            return problem;
        }
        int status = status(request);
        if (status == ProblemType.FORBIDDEN.status()) {
            return Problem.of(ProblemType.FORBIDDEN, Words.notAllowed(denial(request)));
        }
        return Statuses.problem(status, HttpHeaders.EMPTY);
    }

    /** The status to tell; asked for directly, the page is no page: not found. */
    private static int status(HttpServletRequest request) {
        Object status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        return status instanceof Integer code && code >= 400 && code < 600 ? code : ProblemType.NOT_FOUND.status();
    }

    private static @Nullable Throwable denial(HttpServletRequest request) {
        return request.getAttribute(WebAttributes.ACCESS_DENIED_403) instanceof Throwable cause ? cause : null;
    }
}
