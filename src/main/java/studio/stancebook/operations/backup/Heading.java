package studio.stancebook.operations.backup;

import java.time.Instant;

/**
 * The first line of a backup.
 *
 * @param schema the number of the newest script that had been applied to the store, such as {@code 006}
 * @param program the version of the program that made it
 */
public record Heading(int format, String schema, String program, Instant madeAt) {

    /** The format that is written here; others are refused. */
    static final int FORMAT = 1;
}
