package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;

/** What has to be recorded, from JSON names into the words of the pages, each thing once. */
final class MissingWords {

    private static final String OR = ", or ";
    private static final String BOTH_TYRES = Reading.WHEEL_DIAMETER.takenFrom();

    /** Phrases of which the names alone would make clumsy words. */
    private static final Map<String, String> TYRES = Map.of(
            Reading.FRONT_TYRE_DIAMETER.takenFrom(),
            "a front tyre size or diameter",
            Reading.REAR_TYRE_DIAMETER.takenFrom(),
            "a rear tyre size or diameter",
            BOTH_TYRES,
            "the sizes or diameters of both tyres");

    private static final Pattern NAME = Pattern.compile("(?:the )?\\b([a-z][A-Za-z]*)\\b");

    private MissingWords() {}

    /** @param missing each one thing that is missing, in JSON names, the best way to record it first */
    static String of(List<String> missing) {
        List<String> words = once(missing).stream().map(MissingWords::words).toList();
        if (words.size() == 1) {
            return words.get(0);
        }
        boolean plain = words.stream().noneMatch(phrase -> phrase.contains(","));
        String last = words.get(words.size() - 1);
        return String.join(plain ? ", " : "; ", words.subList(0, words.size() - 1))
                + (plain ? ", and " : "; and ")
                + last;
    }

    /** What two need alike, such as the cowl for its x and its z, is named once and alone. */
    private static List<String> once(List<String> missing) {
        Map<String, Long> asked =
                missing.stream().distinct().collect(Collectors.groupingBy(MissingWords::best, Collectors.counting()));
        List<String> once = new ArrayList<>();
        for (String phrase : missing) {
            String named = asked.getOrDefault(best(phrase), 1L) > 1 ? best(phrase) : phrase;
            boolean among = missing.contains(BOTH_TYRES) && !phrase.equals(BOTH_TYRES) && TYRES.containsKey(phrase);
            if (!among && !once.contains(named)) {
                once.add(named);
            }
        }
        return once;
    }

    private static String best(String phrase) {
        int or = phrase.indexOf(OR);
        return or < 0 ? phrase : phrase.substring(0, or);
    }

    private static String words(String phrase) {
        String tyres = TYRES.get(phrase);
        return tyres != null
                ? tyres
                : NAME.matcher(phrase)
                        .replaceAll(found ->
                                Matcher.quoteReplacement(noun(found.group(1)).orElse(found.group())));
    }

    private static Optional<String> noun(String name) {
        return Stream.<Function<String, Optional<String>>>of(
                        MissingWords::tyre,
                        key -> Landmark.ofKey(key).map(MissingWords::point),
                        key -> Polyline.ofKey(key).map(line -> "the " + lower(line.label())),
                        key -> Dimension.ofKey(key).map(dimension -> "the " + lower(dimension.label())))
                .flatMap(lookUp -> lookUp.apply(name).stream())
                .findFirst();
    }

    private static Optional<String> tyre(String name) {
        return Arrays.stream(Axle.values())
                .filter(axle -> axle.tyreKey().equals(name))
                .findFirst()
                .map(axle -> "a " + axle.name().toLowerCase(Locale.ROOT) + " tyre size");
    }

    /** "Belt line, front" is the front of the belt line, "Cowl, base of the windscreen" the cowl point. */
    private static String point(Landmark landmark) {
        String[] parts = landmark.label().split(", ", 2);
        if (parts.length == 1) {
            return "the " + lower(parts[0]);
        }
        return landmark == Landmark.COWL
                ? "the " + lower(parts[0]) + " point"
                : "the " + parts[1] + " of the " + lower(parts[0]);
    }

    /** With a small first letter, unless that is a letter by itself as in H-point. */
    private static String lower(String label) {
        return label.charAt(1) == '-' ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
