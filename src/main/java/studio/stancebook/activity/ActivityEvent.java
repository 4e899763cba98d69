package studio.stancebook.activity;

import java.util.Map;

/**
 * Something that was done to what the studio keeps. Whoever did it publishes it, once for each event, in the transaction that
 * did it; who it was is whoever is signed in at that moment.
 *
 * @param action a past participle such as {@code changed}, at most 40 characters
 * @param kind what it was done to, such as {@code package}, at most 40 characters
 * @param subject the id or key of that, as in addresses
 * @param title what that is called at this moment
 * @param before what was so before, by name; empty for what was made
 * @param after what is so now, by name; empty for what is gone. What is the same in both was not changed
 */
public record ActivityEvent(
        String action,
        String kind,
        String subject,
        String title,
        Map<String, String> before,
        Map<String, String> after) {

    public ActivityEvent {
        before = FieldValues.copy(before);
        after = FieldValues.copy(after);
    }

    /** A event that is about a thing with a number for an id. */
    public static ActivityEvent of(
            String action, String kind, long subject, String title, FieldValues before, FieldValues after) {
        return of(action, kind, String.valueOf(subject), title, before, after);
    }

    /** A event with its facts. */
    public static ActivityEvent of(
            String action, String kind, String subject, String title, FieldValues before, FieldValues after) {
        return new ActivityEvent(action, kind, subject, title, before.all(), after.all());
    }
}
