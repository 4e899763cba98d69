package studio.stancebook.exchange.mapping;

/**
 * What a row says of its segment.
 *
 * @param text key or name; empty when the row names none
 * @param name what to call it if it has to be made; empty for {@code text}
 */
public record NamedSegment(String text, String name) {

    /** Of a row that names none. */
    public static final NamedSegment NONE = new NamedSegment("", "");
}
