package studio.stancebook.drawing.rendering;

import java.nio.charset.StandardCharsets;

/**
 * A part of a page as markup, rendered by a template, which has escaped what it was given. Only {@link FragmentCache} makes
 * one, so that no other text gets into a page unescaped. Kept in UTF-8, half of what the text would take.
 */
public final class CachedFragment {

    private final byte[] utf8;

    CachedFragment(String markup) {
        this.utf8 = markup.getBytes(StandardCharsets.UTF_8);
    }

    /** The markup, as {@code fragments/cached} puts it into a page. */
    public String markup() {
        return new String(utf8, StandardCharsets.UTF_8);
    }

    /** How many bytes it takes in memory. */
    int weight() {
        return utf8.length;
    }
}
