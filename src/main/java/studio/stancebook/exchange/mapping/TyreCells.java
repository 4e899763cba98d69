package studio.stancebook.exchange.mapping;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import studio.stancebook.problem.Refusal;
import studio.stancebook.tyre.TyreDesignation;

/** Puts a tyre designation together from the columns that it is split over. */
final class TyreCells {

    private static final Pattern RIM =
            Pattern.compile("(?i)\\s*([A-Z]{0,3}?)\\s*(\\d{1,2}(?:\\.\\d)?)\\s*(in|\"|″)?\\s*");
    private static final Pattern METRIC_SIZE = Pattern.compile("(?i)(?:P|LT|ST|T)?\\s*\\d{3}\\s*(?:/\\s*\\d{2,3})?");

    private TyreCells() {}

    /**
     * {@code 195/60} and {@code R14} as {@code 195/60R14}; a rim code without letter gets an R. A size that holds its rim
     * already is taken as it is.
     *
     * @param rim may be empty when the size holds it
     */
    static String joined(String size, String rim) {
        Matcher code = RIM.matcher(rim);
        if (!METRIC_SIZE.matcher(size).matches() || !code.matches()) {
            return rim.isEmpty() || size.replace(" ", "").endsWith(rim.replace(" ", "")) ? size : size + rim;
        }
        String letters = code.group(1).isEmpty() ? "R" : code.group(1);
        return size + letters + code.group(2);
    }

    /** The designation of a text; empty, and a problem, when it cannot be read. */
    static Optional<TyreDesignation> read(String columns, String text, Problems problems) {
        try {
            return Optional.of(TyreDesignation.parse(text));
        } catch (Refusal unknown) {
            problems.unreadable(columns, text, unknown.detail());
            return Optional.empty();
        }
    }
}
