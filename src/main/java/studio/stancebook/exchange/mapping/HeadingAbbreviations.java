package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** How people shorten the words of a heading, spelled out (common practice, no source). */
final class HeadingAbbreviations {

    /** Those that hold a slash, an apostrophe or points within a word; taken before a heading is split at them. */
    private static final Map<Pattern, String> JOINED = new LinkedHashMap<>();

    private static final Map<String, String> WORDS = new HashMap<>();

    /** What means one thing beside other words or a unit, and too many by itself. */
    private static final Set<String> UNCLEAR_ALONE = Set.of("l", "w", "h", "app", "appr", "dep", "dept");

    static {
        spelled("front", "f", "fr", "frt", "fnt");
        spelled("rear", "r", "rr");
        spelled("overhang", "oh", "ohang", "ovhg", "ovrhang");
        spelled("height", "h", "ht", "hgt", "hght");
        spelled("length", "l", "len", "lth", "lgth", "lngth");
        spelled("width", "w", "wdth", "wth", "wid");
        spelled("overall", "oa", "ovl", "ovrl");
        spelled("wheelbase", "wb", "wbase", "whlbase");
        spelled("wheel", "whl");
        spelled("ground", "gnd", "grnd", "grd");
        spelled("clearance", "clr", "clear", "clrnce", "clnce");
        spelled("track", "trk", "trck");
        spelled("tyre", "tyres", "tire", "tires");
        spelled("diameter", "dia", "diam", "ø");
        spelled("overall diameter", "od");
        spelled("approach", "app", "appr");
        spelled("departure", "dep", "dept");
        spelled("breakover", "brkover");
        spelled("angle", "ang");
        spelled("minimum", "min");
        spelled("weight", "wt", "wgt");
        spelled("kerb", "curb");
        spelled("vehicle", "veh", "vehicles", "car", "cars");
        spelled("model", "mdl");
        spelled("year", "yr");
        spelled("segment", "seg");
        joined("overhang", "o\\s?[/']\\s?h(?:ang)?");
        joined("wheelbase", "w\\s?/\\s?b(?:ase)?");
        joined("overall", "o\\s?[/']\\s?a(?:ll)?");
        joined("model year", "m\\s?/\\s?y");
        joined("breakover", "b\\s?/\\s?over");
    }

    /** The points of {@code F.O.H.}, between letters that stand alone. */
    private static final Pattern POINTS = Pattern.compile("(?<=\\b\\p{L})\\.(?=\\p{L}\\b)");

    private HeadingAbbreviations() {}

    private static void spelled(String word, String... shorter) {
        for (String abbreviation : shorter) {
            WORDS.put(abbreviation, word);
        }
    }

    private static void joined(String word, String pattern) {
        JOINED.put(Pattern.compile("(?i)(?<!\\p{L})" + pattern + "(?!\\p{L})"), " " + word + " ");
    }

    /** A heading without abbreviations that a split at its punctuation would tear apart. */
    static String whole(String heading) {
        String text = POINTS.matcher(heading).replaceAll("");
        for (Map.Entry<Pattern, String> entry : JOINED.entrySet()) {
            text = entry.getKey().matcher(text).replaceAll(entry.getValue());
        }
        return text;
    }

    /** The words of a heading spelled out, in the order of the alphabet, for "Tyre F" and "front tyre" are the same. */
    static String spelledOut(List<String> words) {
        List<String> spelled = new ArrayList<>();
        words.forEach(
                word -> spelled.addAll(List.of(WORDS.getOrDefault(word, word).split(" "))));
        spelled.sort(null);
        return String.join(" ", spelled);
    }

    /** True of a heading that is too short to tell what it means. */
    static boolean unclear(HeadingWords heading) {
        return heading.unit() == null
                && heading.words().size() == 1
                && UNCLEAR_ALONE.contains(heading.words().get(0));
    }
}
