package studio.stancebook.activity.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.FieldChange;

/**
 * A line as the page shows it.
 *
 * @param at in UTC
 * @param what in words, such as "changed package"
 * @param shown the first changes
 * @param more the other ones
 */
record RecordLine(
        long line, String at, String by, String what, String title, List<FieldChange> shown, List<FieldChange> more) {

    private static final int SHOWN = 4;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

    static RecordLine of(ActivityLine line) {
        List<FieldChange> changes = line.changes();
        int shown = changes.size() <= SHOWN + 1 ? changes.size() : SHOWN;
        return new RecordLine(
                line.line(),
                TIME.format(line.at()),
                line.by(),
                line.kind() + " " + line.action(),
                line.title(),
                changes.subList(0, shown),
                changes.subList(shown, changes.size()));
    }
}
