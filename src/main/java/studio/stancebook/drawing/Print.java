package studio.stancebook.drawing;

import java.nio.charset.StandardCharsets;
import java.util.zip.Deflater;
import org.jspecify.annotations.Nullable;

/**
 * A part of a page as markup, made by a template, which has escaped what it was given. Only {@link Prints} make one, so that
 * no other text gets into a page unescaped.
 */
public final class Print {

    private final byte[] bytes;
    private volatile byte @Nullable [] deflated;

    Print(String markup) {
        this.bytes = markup.getBytes(StandardCharsets.UTF_8);
    }

    /** The markup, as {@code fragments/print} puts it into a page. */
    public String markup() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The markup in UTF-8; not to be changed. */
    byte[] bytes() {
        return bytes;
    }

    /** The markup as a piece of a {@link PiecedGzip}, compressed as well as can be when it is first asked for. */
    byte[] deflated() {
        byte[] known = deflated;
        if (known == null) {
            known = PiecedGzip.deflated(bytes, Deflater.BEST_COMPRESSION);
            deflated = known;
        }
        return known;
    }

    /** How many bytes it takes in memory; markup is compressed to less than a quarter. */
    int weight() {
        return bytes.length + bytes.length / 4;
    }
}
