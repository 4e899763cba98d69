package studio.stancebook.account.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import studio.stancebook.account.session.SignIn;

/**
 * A place where a person is signed in, as a line of the list on their page.
 *
 * @param machine browser and system; empty if they are not known
 * @param since when the person signed in, to the minute in UTC
 * @param lastSeen when it was last used, to the minute in UTC
 */
record SignInLine(String key, String machine, String since, String lastSeen, boolean here) {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    static SignInLine of(SignIn place) {
        return new SignInLine(
                place.key(),
                place.machine(),
                MINUTE.format(place.since()),
                MINUTE.format(place.lastSeen()),
                place.here());
    }
}
