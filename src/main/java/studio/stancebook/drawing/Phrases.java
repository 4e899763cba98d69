package studio.stancebook.drawing;

import java.util.Locale;
import java.util.ResourceBundle;

/** The words of the drawings, which are measured before they are placed; from {@code messages/drawing.properties}. */
public final class Phrases {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("messages/drawing", Locale.ROOT);

    private Phrases() {}

    /** The phrase of a key, with {@code {0}}, {@code {1}}, ... replaced. */
    public static String of(String key, String... values) {
        String phrase = WORDS.getString(key);
        for (int i = 0; i < values.length; i++) {
            phrase = phrase.replace("{" + i + "}", values[i]);
        }
        return phrase;
    }
}
