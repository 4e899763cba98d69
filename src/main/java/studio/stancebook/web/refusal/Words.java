package studio.stancebook.web.refusal;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.InsufficientAuthenticationException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.csrf.CsrfException;
import studio.stancebook.problem.Legible;

/** Sentences for refusals whose own message is not meant for people. */
final class Words {

    private static final int MAX_SHOWN = 80;

    private Words() {}

    static String notSignedIn(AuthenticationException exception) {
        if (exception instanceof InsufficientAuthenticationException) {
            return "This call needs a token: make one by POST /api/v1/tokens and send it as Authorization: Bearer.";
        }
        if (exception instanceof BadCredentialsException && exception.getCause() == null) {
            return Objects.requireNonNullElse(exception.getMessage(), "What was sent to sign in is not accepted.");
        }
        return "What was sent to sign in is not accepted.";
    }

    static String notAllowed(@Nullable Throwable exception) {
        if (exception instanceof CsrfException) {
            return "The form was sent without the mark that its page gave it, or the page was open for too long."
                    + " Load the page again and repeat what you did; nothing was changed.";
        }
        return "Your role in the studio does not allow this.";
    }

    /** A value as it may be repeated to whoever sent it: not endless, and on one line. */
    static String shown(@Nullable Object value) {
        String text = Legible.shown(String.valueOf(value));
        return text.length() <= MAX_SHOWN ? text : text.substring(0, MAX_SHOWN) + "…";
    }

    /** What a value must be to become one of a Java type, without naming the type. */
    static String accepted(@Nullable Class<?> type) {
        if (type == null) {
            return "another kind of value";
        }
        if (type.isEnum()) {
            return "one of its known words";
        }
        if (isOneOf(type, int.class, long.class, short.class, Integer.class, Long.class, Short.class)) {
            return "a whole number";
        }
        if (isOneOf(type, double.class, float.class) || Number.class.isAssignableFrom(type)) {
            return "a number";
        }
        if (isOneOf(type, boolean.class, Boolean.class)) {
            return "true or false";
        }
        if (CharSequence.class.isAssignableFrom(type)) {
            return "text in quotes";
        }
        if (type.isArray() || Iterable.class.isAssignableFrom(type)) {
            return "a list in [ ]";
        }
        if (java.time.temporal.Temporal.class.isAssignableFrom(type)) {
            return "a date or time as in ISO 8601";
        }
        return "an object in { }";
    }

    private static boolean isOneOf(Class<?> type, Class<?>... types) {
        return java.util.List.of(types).contains(type);
    }
}
