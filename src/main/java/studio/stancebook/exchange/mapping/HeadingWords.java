package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A heading taken apart: its words in lower case, and the unit in brackets or at its end.
 *
 * @param words without the unit
 * @param unit null when none is written
 */
record HeadingWords(List<String> words, @Nullable ColumnUnit unit) {

    private static final Pattern BRACKETED = Pattern.compile("(.*?)[\\[(]([^\\[\\]()]*)[\\])]\\s*");
    private static final Pattern HUMP = Pattern.compile("(?<=[a-z])(?=[A-Z])");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}\"″°]+");

    static HeadingWords of(String heading) {
        Matcher bracketed = BRACKETED.matcher(heading);
        if (bracketed.matches()) {
            Optional<ColumnUnit> unit = ColumnUnit.ofSpelling(bracketed.group(2));
            if (unit.isPresent()) {
                return new HeadingWords(words(bracketed.group(1)), unit.get());
            }
        }
        List<String> words = words(heading);
        Optional<ColumnUnit> last =
                words.size() < 2 ? Optional.empty() : ColumnUnit.ofSpelling(words.get(words.size() - 1));
        return last.isEmpty()
                ? new HeadingWords(words, null)
                : new HeadingWords(words.subList(0, words.size() - 1), last.get());
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String part :
                BETWEEN.split(HUMP.matcher(HeadingAbbreviations.whole(text)).replaceAll(" "))) {
            if (!part.isEmpty()) {
                words.add(part.toLowerCase(Locale.ROOT));
            }
        }
        return words;
    }

    /** The words with single spaces between them. */
    String phrase() {
        return String.join(" ", words);
    }

    /** The words without one of them. */
    HeadingWords without(int index) {
        List<String> rest = new ArrayList<>(words);
        rest.remove(index);
        return new HeadingWords(rest, unit);
    }
}
