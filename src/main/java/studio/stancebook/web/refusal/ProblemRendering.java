package studio.stancebook.web.refusal;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.springframework.web.servlet.ModelAndView;
import studio.stancebook.access.SignedIn;
import studio.stancebook.problem.ProblemType;

/**
 * Tells a problem in the form that fits who asked: JSON under {@code /api} and {@code /actuator} and where the API is
 * described, a page elsewhere.
 */
@Component
class ProblemRendering {

    private static final Logger LOG = LoggerFactory.getLogger(ProblemRendering.class);
    private static final List<String> FOR_PROGRAMS = List.of("/api/", "/actuator/", "/v3/api-docs");

    /** Something that a handler of exceptions or of requests may return. */
    Object render(Problem problem, HttpServletRequest request) {
        if (problem.status() == ProblemType.FORBIDDEN.status()) {
            logForbidden(request);
        }
        return isForApi(request) ? json(problem, request) : page(problem, request);
    }

    private static ResponseEntity<ProblemJson> json(Problem problem, HttpServletRequest request) {
        return ResponseEntity.status(problem.status())
                .headers(problem.headers())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(ProblemJson.of(problem, RequestId.of(request)));
    }

    private static ModelAndView page(Problem problem, HttpServletRequest request) {
        if (RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes here) {
            HttpServletResponse response = here.getResponse();
            if (response != null) {
                problem.headers().forEach((name, values) -> response.setHeader(name, String.join(", ", values)));
            }
        }
        Map<String, Object> model = Map.of(
                "status", problem.status(),
                "title", problem.type().title(),
                "detail", problem.detail(),
                "errors", problem.errors(),
                "more", problem.errorCount() - problem.errors().size(),
                "requestId", Objects.requireNonNullElse(RequestId.of(request), ""));
        return new ModelAndView("error", model, HttpStatusCode.valueOf(problem.status()));
    }

    /** Strangers leave no line: they could send any number of forms without the mark of their page. */
    private static void logForbidden(HttpServletRequest request) {
        SignedIn.current()
                .ifPresent(who -> LOG.info(
                        "{} {} is not allowed to {}", request.getMethod(), Words.shown(address(request)), who));
    }

    /** Whether a program asks, by the address that was asked for first. */
    static boolean isForApi(HttpServletRequest request) {
        String path = address(request);
        return FOR_PROGRAMS.stream().anyMatch(start -> path.startsWith(request.getContextPath() + start));
    }

    private static String address(HttpServletRequest request) {
        Object failed = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        return failed instanceof String uri ? uri : request.getRequestURI();
    }
}
