package studio.stancebook.tyre;

import java.util.List;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** A text that is not a tyre size this server can read. */
public final class UnknownTyreDesignation extends Impossible {

    private static final int SHOWN_LENGTH = 40;

    private final String reason;

    private UnknownTyreDesignation(String field, String message, String reason) {
        super(message, List.of(new FieldError(field, message)));
        this.reason = reason;
    }

    static UnknownTyreDesignation of(String text, String reason) {
        return new UnknownTyreDesignation("designation", "'" + shown(text) + "' is not a tyre size: " + reason, reason);
    }

    /** What is wrong with the text and what is accepted, without the text itself. */
    public String reason() {
        return reason;
    }

    /** The same refusal, for the field of a larger request that held the designation. */
    public UnknownTyreDesignation inField(String field) {
        return new UnknownTyreDesignation(field, detail(), reason);
    }

    private static String shown(String text) {
        String printable = text.replaceAll("\\p{C}", " ").strip();
        return printable.length() <= SHOWN_LENGTH ? printable : printable.substring(0, SHOWN_LENGTH) + "...";
    }
}
