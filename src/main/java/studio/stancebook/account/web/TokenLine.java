package studio.stancebook.account.web;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import studio.stancebook.account.internal.TokenEntry;

/**
 * A token as a line of the list on its owner's page.
 *
 * @param scope the key of the words for what it may do
 * @param made when, to the minute in UTC
 * @param used when last, to the minute in UTC; null if never
 * @param expires when, to the minute in UTC
 * @param mark the key of the words for an end that is near or past; null for another
 */
record TokenLine(
        long id,
        String name,
        String scope,
        String made,
        @Nullable String used,
        String expires,
        @Nullable String mark) {

    /** Our choice: time enough to make another and to give it to the program. */
    static final Duration SOON = Duration.ofDays(14);

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    static TokenLine of(TokenEntry token, Instant now) {
        Instant used = token.lastUsedAt();
        return new TokenLine(
                token.id(),
                token.name(),
                "account.token.scope." + token.scope().key(),
                MINUTE.format(token.createdAt()),
                used == null ? null : MINUTE.format(used),
                MINUTE.format(token.expiresAt()),
                mark(token.expiresAt(), now));
    }

    private static @Nullable String mark(Instant end, Instant now) {
        if (!now.isBefore(end)) {
            return "account.token.expired";
        }
        return now.isBefore(end.minus(SOON)) ? null : "account.token.soon";
    }
}
