package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.AnnotationUtils;
import org.springframework.core.annotation.Order;
import org.springframework.dao.InvalidDataAccessApiUsageException;
import org.springframework.http.HttpHeaders;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;
import studio.stancebook.operations.StoreRefusals;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.problem.Refusal;

/** Everything that nothing else knows: a status if the exception has one, else a failure of ours, told without detail. */
@ControllerAdvice
@Order(Ordered.LOWEST_PRECEDENCE)
class LastAdvice {

    private static final Logger LOG = LoggerFactory.getLogger(LastAdvice.class);

    /** Has the container close the connection under an answer that cannot be finished. */
    static final class BrokenOff extends RuntimeException {

        private static final long serialVersionUID = 1L;

        BrokenOff(Exception cause) {
            super("An answer broke off", cause);
        }
    }

    private static final String SORT = "sort";

    private final ProblemRendering rendering;
    private final StoreRefusals store;

    LastAdvice(ProblemRendering rendering, StoreRefusals store) {
        this.rendering = rendering;
        this.store = store;
    }

    /** Whoever asked has gone: there is nobody to tell. */
    @ExceptionHandler
    void gone(AsyncRequestNotUsableException exception) {
        LOG.debug("The connection was closed before the answer was sent", exception);
    }

    @ExceptionHandler
    Object failed(Exception exception, HttpServletRequest request, HttpServletResponse answer) {
        if (answer.isCommitted()) {
            // Part of the answer has gone out as if all were well: only breaking off tells that it is not whole.
            throw new BrokenOff(exception);
        }
        if (exception instanceof ErrorResponse response) {
            return rendering.render(Statuses.problem(response.getStatusCode().value(), response.getHeaders()), request);
        }
        ResponseStatus declared = AnnotationUtils.findAnnotation(exception.getClass(), ResponseStatus.class);
        if (declared != null) {
            return rendering.render(Statuses.problem(declared.code().value(), HttpHeaders.EMPTY), request);
        }
        Optional<Refusal> ofStore = store.of(exception);
        if (ofStore.isPresent()) {
            return rendering.render(Problem.of(ofStore.get()), request);
        }
        if (exception instanceof InvalidDataAccessApiUsageException && request.getParameter(SORT) != null) {
            return rendering.render(Problem.ofField(ProblemType.MALFORMED, SORT, notSortable(request)), request);
        }
        LOG.error("{} {} failed", request.getMethod(), request.getRequestURI(), exception);
        return rendering.render(Statuses.problem(ProblemType.INTERNAL.status(), HttpHeaders.EMPTY), request);
    }

    /** The database layer was handed an order that the list has no column for. */
    private static String notSortable(HttpServletRequest request) {
        return "The list cannot be sorted by \"" + Words.shown(request.getParameter(SORT)) + "\".";
    }
}
