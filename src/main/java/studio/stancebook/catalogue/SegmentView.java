package studio.stancebook.catalogue;

/**
 * A segment.
 *
 * @param key its name in JSON and addresses
 * @param description may be empty
 * @param version counts the changes of name and description
 * @param revision counts the changes of its class
 * @param packages how many packages it has, those set aside included
 */
public record SegmentView(
        long id, String key, String name, String description, long version, long revision, int packages) {}
