package studio.stancebook.catalogue;

/** A segment as other parts of the studio mention it. */
public record SegmentName(long id, String key, String name) {}
