package studio.stancebook.drawing.rendering;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;

/**
 * The name under which a file is saved, such as {@code tern-r2-review.pdf}: small letters a to z, digits and hyphens alone, so
 * that it needs no quoting and no encoding in the header (RFC 6266, appendix D) and is a file on every system.
 */
public final class DownloadName {

    private static final int MOST_LETTERS = 80;

    private final String name;

    private DownloadName(String name) {
        this.name = name;
    }

    /**
     * @param extension without the dot
     * @param parts what the name is made of; letters with accents lose them, all else that is no letter or digit becomes a hyphen
     */
    public static DownloadName of(String extension, String... parts) {
        String words = Arrays.stream(parts)
                .map(DownloadName::plain)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("-"));
        return new DownloadName((words.isEmpty() ? "drawing" : words) + "." + extension);
    }

    private static String plain(String part) {
        String letters = Normalizer.normalize(part, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String kept = letters.length() > MOST_LETTERS ? letters.substring(0, MOST_LETTERS) : letters;
        return kept.replaceAll("^-|-$", "");
    }

    /** The header that makes a browser save the answer instead of showing it. */
    public HttpHeaders header() {
        HttpHeaders headers = new HttpHeaders();
        headers.setContentDisposition(
                ContentDisposition.attachment().filename(name).build());
        return headers;
    }

    @Override
    public String toString() {
        return name;
    }
}
