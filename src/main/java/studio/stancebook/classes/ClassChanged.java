package studio.stancebook.classes;

/**
 * The class of a segment changed: a package came, went, changed or was set aside.
 *
 * @param segment the key of the segment
 * @param revision the revision that the change led to
 */
public record ClassChanged(String segment, long revision) {}
