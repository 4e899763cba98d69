package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ConstraintViolationException;
import java.util.List;
import java.util.Objects;
import org.springframework.context.MessageSourceResolvable;
import org.springframework.core.annotation.Order;
import org.springframework.validation.BindException;
import org.springframework.validation.ObjectError;
import org.springframework.validation.method.ParameterValidationResult;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.HandlerMethodValidationException;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.ProblemType;

/** Values that could be read but break a rule declared on a form, a body or a parameter. */
@ControllerAdvice
@Order(2)
class ValidationAdvice {

    private static final String NOT_ACCEPTED = "This value is not accepted.";

    private final ProblemRendering rendering;

    ValidationAdvice(ProblemRendering rendering) {
        this.rendering = rendering;
    }

    @ExceptionHandler
    Object invalid(BindException exception, HttpServletRequest request) {
        boolean unreadable = exception.getFieldErrors().stream()
                .anyMatch(org.springframework.validation.FieldError::isBindingFailure);
        List<FieldError> errors =
                exception.getAllErrors().stream().map(ValidationAdvice::error).toList();
        return refuse(unreadable ? ProblemType.MALFORMED : ProblemType.IMPOSSIBLE, errors, request);
    }

    @ExceptionHandler
    Object invalid(HandlerMethodValidationException exception, HttpServletRequest request) {
        List<FieldError> errors = exception.getParameterValidationResults().stream()
                .flatMap(result -> result.getResolvableErrors().stream().map(error -> error(result, error)))
                .toList();
        return refuse(ProblemType.MALFORMED, errors, request);
    }

    @ExceptionHandler
    Object invalid(ConstraintViolationException exception, HttpServletRequest request) {
        List<FieldError> errors = exception.getConstraintViolations().stream()
                .map(ValidationAdvice::error)
                .sorted(java.util.Comparator.comparing(FieldError::field).thenComparing(FieldError::message))
                .toList();
        return refuse(ProblemType.IMPOSSIBLE, errors, request);
    }

    private Object refuse(ProblemType type, List<FieldError> errors, HttpServletRequest request) {
        String detail = errors.size() == 1 ? errors.get(0).message() : errors.size() + " fields cannot be accepted.";
        return rendering.render(Problem.of(type, detail, ErrorList.of(errors)), request);
    }

    private static FieldError error(ObjectError error) {
        if (error instanceof org.springframework.validation.FieldError field) {
            return new FieldError(field.getField(), field.isBindingFailure() ? unreadable(field) : message(field));
        }
        return new FieldError(error.getObjectName(), message(error));
    }

    private static String unreadable(org.springframework.validation.FieldError field) {
        return "\"" + Words.shown(field.getRejectedValue()) + "\" is not accepted for " + field.getField() + ".";
    }

    private static FieldError error(ParameterValidationResult result, MessageSourceResolvable error) {
        String name = Objects.requireNonNullElse(result.getMethodParameter().getParameterName(), "parameter");
        return new FieldError(name, "\"" + Words.shown(result.getArgument()) + "\": " + message(error));
    }

    private static FieldError error(ConstraintViolation<?> violation) {
        return new FieldError(String.valueOf(violation.getPropertyPath()), violation.getMessage());
    }

    private static String message(MessageSourceResolvable error) {
        return Objects.requireNonNullElse(error.getDefaultMessage(), NOT_ACCEPTED);
    }
}
