package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletRequest;
import java.util.stream.Collectors;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.beans.TypeMismatchException;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.annotation.Order;
import org.springframework.data.core.PropertyReferenceException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.util.unit.DataSize;
import org.springframework.web.HttpMediaTypeNotAcceptableException;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingRequestHeaderException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.UnsatisfiedServletRequestParameterException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.multipart.support.MissingServletRequestPartException;
import org.springframework.web.servlet.NoHandlerFoundException;
import org.springframework.web.servlet.resource.NoResourceFoundException;
import studio.stancebook.edge.BodyRefused;
import studio.stancebook.problem.ProblemType;

/** Requests that never reached a method of ours, because of how they were made. */
@ControllerAdvice
@Order(2)
class RequestAdvice {

    private final ProblemRendering rendering;
    private final DataSize largestFile;

    RequestAdvice(
            ProblemRendering rendering, @Value("${spring.servlet.multipart.max-file-size}") DataSize largestFile) {
        this.rendering = rendering;
        this.largestFile = largestFile;
    }

    @ExceptionHandler
    Object unreadable(HttpMessageNotReadableException exception, HttpServletRequest request) {
        return rendering.render(BodyProblems.in(exception).orElseGet(() -> JsonProblems.of(exception)), request);
    }

    @ExceptionHandler
    Object brokenOff(BodyRefused refused, HttpServletRequest request) {
        return rendering.render(BodyProblems.of(refused), request);
    }

    /** A form, since queries that cannot be read are refused before. */
    @ExceptionHandler
    Object unreadable(InvalidParameterException exception, HttpServletRequest request) {
        return rendering.render(BodyProblems.of(exception), request);
    }

    @ExceptionHandler
    Object notOfType(MethodArgumentTypeMismatchException exception, HttpServletRequest request) {
        return notOfType(exception.getName(), exception, request);
    }

    @ExceptionHandler
    Object notOfType(TypeMismatchException exception, HttpServletRequest request) {
        return notOfType("value", exception, request);
    }

    private Object notOfType(String name, TypeMismatchException exception, HttpServletRequest request) {
        String message = "\"" + Words.shown(exception.getValue()) + "\" is not accepted for " + name + ": it takes "
                + Words.accepted(exception.getRequiredType()) + ".";
        return rendering.render(Problem.ofField(ProblemType.MALFORMED, name, message), request);
    }

    @ExceptionHandler
    Object parameterMissing(MissingServletRequestParameterException exception, HttpServletRequest request) {
        return missing("parameter", exception.getParameterName(), request);
    }

    @ExceptionHandler
    Object partMissing(MissingServletRequestPartException exception, HttpServletRequest request) {
        return missing("part", exception.getRequestPartName(), request);
    }

    @ExceptionHandler
    Object headerMissing(MissingRequestHeaderException exception, HttpServletRequest request) {
        return missing("header", exception.getHeaderName(), request);
    }

    private Object missing(String what, String name, HttpServletRequest request) {
        String message = "The " + what + " " + name + " is missing.";
        return rendering.render(Problem.ofField(ProblemType.MALFORMED, name, message), request);
    }

    @ExceptionHandler
    Object parametersDoNotFit(UnsatisfiedServletRequestParameterException exception, HttpServletRequest request) {
        String message = "The parameters do not fit this call, which takes "
                + String.join(" and ", exception.getParamConditions()) + ".";
        return rendering.render(Problem.of(ProblemType.MALFORMED, message), request);
    }

    @ExceptionHandler
    Object notSortable(PropertyReferenceException exception, HttpServletRequest request) {
        String message = "The list cannot be sorted by \"" + Words.shown(exception.getPropertyName()) + "\".";
        return rendering.render(Problem.ofField(ProblemType.MALFORMED, "sort", message), request);
    }

    @ExceptionHandler
    Object methodNotAllowed(HttpRequestMethodNotSupportedException exception, HttpServletRequest request) {
        String allowed = exception.getSupportedHttpMethods() == null
                ? ""
                : exception.getSupportedHttpMethods().stream()
                        .map(HttpMethod::name)
                        .sorted()
                        .collect(Collectors.joining(", "));
        String message = "This address takes " + (allowed.isEmpty() ? "other methods" : allowed) + ", not "
                + Words.shown(exception.getMethod()) + ".";
        return rendering.render(Problem.of(ProblemType.METHOD_NOT_ALLOWED, message, exception.getHeaders()), request);
    }

    @ExceptionHandler
    Object unsupported(HttpMediaTypeNotSupportedException exception, HttpServletRequest request) {
        String sent = exception.getContentType() == null
                ? "no Content-Type that can be read"
                : Words.shown(exception.getContentType());
        String message = "This call takes " + named(exception.getSupportedMediaTypes()) + "; sent was " + sent + ".";
        HttpHeaders headers = new HttpHeaders();
        headers.setAccept(exception.getSupportedMediaTypes());
        return rendering.render(Problem.of(ProblemType.UNSUPPORTED_MEDIA, message, headers), request);
    }

    @ExceptionHandler
    Object notAcceptable(HttpMediaTypeNotAcceptableException exception, HttpServletRequest request) {
        String message = "This answer is to be had as " + named(exception.getSupportedMediaTypes()) + ".";
        return rendering.render(Problem.of(ProblemType.NOT_ACCEPTABLE, message), request);
    }

    private static String named(java.util.List<MediaType> types) {
        return types.isEmpty()
                ? "another kind of content"
                : types.stream().map(MediaType::toString).distinct().sorted().collect(Collectors.joining(", "));
    }

    @ExceptionHandler
    Object tooLarge(MaxUploadSizeExceededException exception, HttpServletRequest request) {
        String message = "The file is too large. At most " + largestFile.toMegabytes() + " MB are accepted.";
        return rendering.render(Problem.of(ProblemType.TOO_LARGE, message), request);
    }

    @ExceptionHandler
    Object notMultipart(MultipartException exception, HttpServletRequest request) {
        String message = "The request cannot be read as multipart/form-data with a file in it.";
        return rendering.render(
                BodyProblems.in(exception).orElseGet(() -> Problem.of(ProblemType.MALFORMED, message)), request);
    }

    @ExceptionHandler
    Object nothingThere(NoResourceFoundException exception, HttpServletRequest request) {
        return nothingThere(request);
    }

    @ExceptionHandler
    Object nothingThere(NoHandlerFoundException exception, HttpServletRequest request) {
        return nothingThere(request);
    }

    private Object nothingThere(HttpServletRequest request) {
        String message = "There is nothing at " + Words.shown(request.getRequestURI()) + ".";
        return rendering.render(Problem.of(ProblemType.NOT_FOUND, message), request);
    }
}
