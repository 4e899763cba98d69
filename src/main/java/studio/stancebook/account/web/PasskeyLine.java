package studio.stancebook.account.web;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import studio.stancebook.account.internal.PasskeyEntry;

/**
 * A passkey as a line of the list on its owner's page.
 *
 * @param made when, to the minute in UTC
 * @param used when last, to the minute in UTC; null if never
 */
record PasskeyLine(
        long id, String label, String made, @Nullable String used) {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    static PasskeyLine of(PasskeyEntry passkey) {
        Instant used = passkey.lastUsedAt();
        return new PasskeyLine(
                passkey.id(),
                passkey.label(),
                MINUTE.format(passkey.createdAt()),
                used == null ? null : MINUTE.format(used));
    }
}
