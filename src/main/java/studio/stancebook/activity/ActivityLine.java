package studio.stancebook.activity;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of the activity record.
 *
 * @param line its number, from 1 without gaps
 * @param at when it was done
 * @param byId the id of who did it; null for what the server did by itself
 * @param by the name of who did it, at that moment
 * @param action a past participle, such as {@code changed}
 * @param kind what it was done to, such as {@code package}
 * @param subject the id or key of that
 * @param title what that was called at that moment
 * @param previousHash the hash of the line before; {@value #NO_HASH} in the first
 * @param hash of this line, as docs/operations.md tells
 */
public record ActivityLine(
        long line,
        Instant at,
        @Nullable Long byId,
        String by,
        String action,
        String kind,
        String subject,
        String title,
        List<FieldChange> changes,
        String previousHash,
        String hash) {

    /** Stands where there is no line before. */
    public static final String NO_HASH = "0000000000000000000000000000000000000000000000000000000000000000";

    public ActivityLine {
        changes = List.copyOf(changes);
    }
}
