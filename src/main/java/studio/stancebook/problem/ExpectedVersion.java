package studio.stancebook.problem;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The version that a writer believes to be current (RFC 9110, If-Match with one strong entity tag).
 *
 * @param value the version, 0 for a thing never changed
 */
public record ExpectedVersion(long value) {

    private static final Pattern TAG = Pattern.compile("\"(\\d{1,18})\"");

    /**
     * Reads an If-Match header.
     *
     * @throws PreconditionRequired if there is none
     * @throws Malformed if it is not one quoted version
     */
    public static ExpectedVersion ofIfMatch(@Nullable String header) {
        if (header == null || header.isBlank()) {
            throw new PreconditionRequired(
                    "Send If-Match with the ETag that you read, so that nobody's change is overwritten.");
        }
        Matcher matcher = TAG.matcher(header.strip());
        if (!matcher.matches()) {
            throw Malformed.ofField("If-Match", "If-Match takes one quoted version such as \"3\".");
        }
        return new ExpectedVersion(Long.parseLong(matcher.group(1)));
    }

    /** The entity tag of a version, quotes included. */
    public static String tag(long version) {
        return "\"" + version + "\"";
    }

    /** @throws Stale if {@code actual} is another version */
    public void check(long actual, String what) {
        if (actual != value) {
            throw new Stale("The " + what + " is at version " + actual + " now, not " + value
                    + ": read it again and make the change on top of that.");
        }
    }
}
