package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletRequest;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.annotation.Order;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import studio.stancebook.problem.ProblemType;

/** What the database refused because of others who write at the same time, or as the last to check a value. */
@ControllerAdvice
@Order(2)
class StoreAdvice {

    private static final Logger LOG = LoggerFactory.getLogger(StoreAdvice.class);

    /** The class of SQLSTATE for values that do not fit their type (ISO/IEC 9075: data exception). */
    private static final String DATA_EXCEPTION = "22";

    private final ProblemRendering rendering;

    StoreAdvice(ProblemRendering rendering) {
        this.rendering = rendering;
    }

    @ExceptionHandler
    Object changedMeanwhile(OptimisticLockingFailureException exception, HttpServletRequest request) {
        String message = "Somebody else changed this at the same moment: read it again and make your change on top.";
        return rendering.render(Problem.of(ProblemType.STALE, message), request);
    }

    @ExceptionHandler
    Object inEachOthersWay(ConcurrencyFailureException exception, HttpServletRequest request) {
        String message = "Somebody else is changing the same things at this moment: try again.";
        return rendering.render(Problem.of(ProblemType.CONFLICT, message), request);
    }

    /** A rule that only the database knew of is a gap in ours, so it is logged. */
    @ExceptionHandler
    Object notStorable(DataIntegrityViolationException exception, HttpServletRequest request) {
        LOG.warn(
                "The database refused what nothing before it had: {}",
                exception.getMostSpecificCause().toString());
        Problem problem = isDataException(exception)
                ? Problem.of(
                        ProblemType.IMPOSSIBLE, "A value is too long, too large or has characters that cannot be kept.")
                : Problem.of(
                        ProblemType.CONFLICT, "This contradicts what is already stored, such as a name that is taken.");
        return rendering.render(problem, request);
    }

    private static boolean isDataException(DataIntegrityViolationException exception) {
        String state = exception.getMostSpecificCause() instanceof SQLException sql ? sql.getSQLState() : null;
        return startsWith(state, DATA_EXCEPTION);
    }

    private static boolean startsWith(@Nullable String state, String start) {
        return state != null && state.startsWith(start);
    }
}
