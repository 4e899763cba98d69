package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.core.annotation.Order;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.problem.Refusal;

/** Refusals of our own, and those of the filters in front. */
@ControllerAdvice
@Order(1)
class RefusalAdvice {

    private final ProblemRendering rendering;

    RefusalAdvice(ProblemRendering rendering) {
        this.rendering = rendering;
    }

    @ExceptionHandler
    Object refused(Refusal refusal, HttpServletRequest request) {
        return rendering.render(Problem.of(refusal), request);
    }

    @ExceptionHandler
    Object notSignedIn(AuthenticationException exception, HttpServletRequest request) {
        return rendering.render(Problem.of(ProblemType.UNAUTHENTICATED, Words.notSignedIn(exception)), request);
    }

    @ExceptionHandler
    Object notAllowed(AccessDeniedException exception, HttpServletRequest request) {
        return rendering.render(Problem.of(ProblemType.FORBIDDEN, Words.notAllowed(exception)), request);
    }
}
