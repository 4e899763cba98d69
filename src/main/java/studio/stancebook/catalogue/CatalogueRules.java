package studio.stancebook.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Legible;
import studio.stancebook.quantity.Interval;

/** What names, keys, years and reasons may be. */
public final class CatalogueRules {

    /** Most characters of a name. */
    public static final int MOST_NAME = 200;
    /** Most characters of a description. */
    public static final int MOST_DESCRIPTION = 2000;
    /** Most characters of a reason, a question or an answer. */
    public static final int MOST_REASON = 500;
    /** Plausible model years. */
    public static final Interval MODEL_YEARS = new Interval(1880, 2100);

    private static final Pattern KEY = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");

    /** Words that stand in addresses where the key of a segment does; ReservedKeysTest compares them with the routes. */
    private static final Set<String> RESERVED = Set.of("new");

    private CatalogueRules() {}

    /** What is wrong with a name that has no blanks around it. */
    public static Optional<FieldError> name(String field, String name) {
        return line(field, name, MOST_NAME, "a name");
    }

    /** What is wrong with the key of a segment. */
    public static Optional<FieldError> key(String key) {
        if (RESERVED.contains(key)) {
            return error(false, "key", shown(key) + " is a word of the studio's own addresses; take another key.");
        }
        return error(
                KEY.matcher(key).matches(),
                "key",
                shown(key) + " is not a key: a key has 1 to 60 lower-case letters, digits and hyphens, and does not"
                        + " start with a hyphen.");
    }

    /** What is wrong with a description that has no blanks around it; line breaks are allowed. */
    public static Optional<FieldError> description(String description) {
        return Legible.faultOfText("a description", description, MOST_DESCRIPTION)
                .map(fault -> new FieldError("description", fault));
    }

    /** What is wrong with a reason that has no blanks around it. */
    public static Optional<FieldError> reason(String reason) {
        return line("reason", reason, MOST_REASON, "a reason");
    }

    /** What is wrong with the answer to a query. */
    public static Optional<FieldError> answer(String answer) {
        return answer.isEmpty()
                ? error(false, "answer", "Say what was found: a query is settled with a note.")
                : line("answer", answer, MOST_REASON, "an answer");
    }

    /** What is wrong with a model year. */
    public static Optional<FieldError> modelYear(@Nullable Integer year) {
        return error(
                year == null || MODEL_YEARS.contains(year),
                "modelYear",
                "A model year is from 1880 to 2100, not " + year + ".");
    }

    /** @throws Impossible if there is an error */
    public static void refuse(List<FieldError> errors) {
        if (!errors.isEmpty()) {
            throw new Impossible(errors.get(0).message(), errors);
        }
    }

    /**
     * A key made from a heading: "Sport utility" gives {@code sport-utility}. Empty when nothing of it can be in a key.
     */
    public static Optional<String> keyOf(String heading) {
        String key = heading.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+", "");
        String cut = key.substring(0, Math.min(60, key.length())).replaceAll("-+$", "");
        return cut.isEmpty() ? Optional.empty() : Optional.of(cut);
    }

    /** A text on one line, without control characters, of at most {@value #MOST_REASON} characters. */
    public static String shortened(String text) {
        String line = text.strip().replaceAll("\\p{Cntrl}+", " ");
        return line.length() <= MOST_REASON ? line : line.substring(0, MOST_REASON - 1) + "…";
    }

    private static Optional<FieldError> line(String field, String text, int most, String what) {
        return Legible.faultOfLine(what, text, most).map(fault -> new FieldError(field, fault));
    }

    private static Optional<FieldError> error(boolean fine, String field, String message) {
        return fine ? Optional.empty() : Optional.of(new FieldError(field, message));
    }

    private static String shown(String text) {
        String line = Legible.shown(text);
        return "\"" + (line.length() <= 40 ? line : line.substring(0, 40) + "…") + "\"";
    }
}
