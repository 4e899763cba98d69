package studio.stancebook.web.refusal;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.converter.HttpMessageNotReadableException;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.problem.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.exc.InvalidFormatException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Says what is wrong with a JSON body: where, what was there, what is accepted; never a name from our code. */
final class JsonProblems {

    private JsonProblems() {}

    static Problem of(HttpMessageNotReadableException exception) {
        Optional<Refusal> ours = refusalIn(exception);
        if (ours.isPresent()) {
            return Problem.of(ours.get());
        }
        if (exception.getCause() instanceof JacksonException json) {
            return ofJson(json);
        }
        return Problem.of(ProblemType.MALFORMED, "The body is missing or cannot be read; this call takes a JSON body.");
    }

    /** A value object may refuse what it is made of, in its own words. */
    private static Optional<Refusal> refusalIn(Throwable exception) {
        for (Throwable cause = exception; cause != null; cause = cause.getCause()) {
            if (cause instanceof Refusal refusal) {
                return Optional.of(refusal);
            }
        }
        return Optional.empty();
    }

    private static Problem ofJson(JacksonException json) {
        if (json instanceof StreamConstraintsException) {
            return Problem.of(
                    ProblemType.MALFORMED,
                    "The JSON is nested too deeply, has too many values, or a number, name or text in it is too long"
                            + at(json) + ".");
        }
        if (json instanceof UnrecognizedPropertyException unknown) {
            return field(
                    json,
                    "There is no field \"" + Words.shown(unknown.getPropertyName()) + "\" here"
                            + known(unknown.getKnownPropertyIds()) + ".");
        }
        if (json instanceof InvalidFormatException format) {
            return field(
                    json,
                    "\"" + Words.shown(format.getValue()) + "\" is not accepted: it takes "
                            + accepted(format.getTargetType()) + ".");
        }
        if (json instanceof MismatchedInputException mismatch) {
            return field(json, "This field takes " + Words.accepted(mismatch.getTargetType()) + at(json) + ".");
        }
        if (json instanceof DatabindException) {
            return field(json, "The value is not accepted" + at(json) + ".");
        }
        return Problem.of(ProblemType.MALFORMED, "The body is not correct JSON" + at(json) + ".");
    }

    private static Problem field(JacksonException json, String message) {
        String path = path(json);
        return path.isEmpty()
                ? Problem.of(ProblemType.MALFORMED, message)
                : Problem.ofField(ProblemType.MALFORMED, path, message);
    }

    /** The way to a value, such as {@code dimensions.underbody[2]}. */
    private static String path(JacksonException json) {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : json.getPath()) {
            String name = step.getPropertyName();
            if (name == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(Words.shown(name));
            }
        }
        return path.toString();
    }

    private static String known(@Nullable Collection<Object> names) {
        if (names == null || names.isEmpty()) {
            return "";
        }
        return "; known are " + names.stream().map(String::valueOf).sorted().collect(Collectors.joining(", "));
    }

    private static String accepted(@Nullable Class<?> type) {
        if (type == null || !type.isEnum()) {
            return Words.accepted(type);
        }
        return "one of "
                + java.util.Arrays.stream(type.getEnumConstants())
                        .map(String::valueOf)
                        .collect(Collectors.joining(", "));
    }

    private static String at(JacksonException json) {
        TokenStreamLocation place = json.getLocation();
        return place == null || place.getLineNr() < 1
                ? ""
                : " (line " + place.getLineNr() + ", column " + place.getColumnNr() + ")";
    }
}
