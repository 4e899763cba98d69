package studio.stancebook.web.shell;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How pages are drawn: tape on film, tape on a blueprint, or whichever of them the reader's system asks for. */
enum Theme {
    SYSTEM,
    LIGHT,
    DARK;

    /** The word in cookie, form and {@code data-theme}. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The theme of a word; empty for any other word. */
    static Optional<Theme> ofKey(String key) {
        return Arrays.stream(values()).filter(theme -> theme.key().equals(key)).findFirst();
    }

    /** All words, for a sentence that says what is accepted. */
    static String keys() {
        return Arrays.stream(values()).map(Theme::key).collect(Collectors.joining(", "));
    }
}
