package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Reading;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Legible;

/**
 * A ratio that a studio adds: the sum of some readings over the sum of others, so linear over linear.
 *
 * @param key the name in JSON and addresses: lower-case letters, digits and hyphens, 3 to 60 characters
 * @param name the name on pages, 1 to 80 characters
 * @param numerator one to eight lengths
 * @param denominator one to eight lengths
 */
public record StudioRatio(String key, String name, List<Reading> numerator, List<Reading> denominator) {

    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9-]{2,59}");
    private static final int MOST_NAME = 80;
    private static final int MOST_TERMS = 8;

    /** Words that stand in addresses where the key of a measure does; ReservedKeysTest compares them with the routes. */
    private static final Set<String> RESERVED = Set.of("lengths");

    /** @throws Impossible naming the field, its value and what is accepted */
    public StudioRatio {
        numerator = List.copyOf(numerator);
        denominator = List.copyOf(denominator);
        List<FieldError> errors = new ArrayList<>();
        if (RESERVED.contains(key)) {
            errors.add(new FieldError(
                    "key", "\"" + key + "\" is a word of the studio's own addresses; take another key."));
        }
        if (!KEY.matcher(key).matches()) {
            errors.add(new FieldError(
                    "key", "A key has 3 to 60 lower-case letters, digits and hyphens, starting with a letter."));
        }
        Legible.faultOfLine("a name", name, MOST_NAME).ifPresent(fault -> errors.add(new FieldError("name", fault)));
        checkTerms("numerator", numerator, errors);
        checkTerms("denominator", denominator, errors);
        if (!errors.isEmpty()) {
            throw new Impossible(errors.get(0).message(), errors);
        }
    }

    private static void checkTerms(String field, List<Reading> terms, List<FieldError> errors) {
        if (terms.isEmpty() || terms.size() > MOST_TERMS) {
            errors.add(
                    new FieldError(field, "One to " + MOST_TERMS + " lengths are needed, not " + terms.size() + "."));
        }
        terms.stream()
                .filter(Reading::angle)
                .forEach(angle ->
                        errors.add(new FieldError(field, angle.key() + " is an angle; a ratio is made of lengths.")));
    }

    /** "a + b over c", in the trade's words. */
    public String definition() {
        return sentence(numerator) + " over " + sentence(denominator) + ".";
    }

    private static String sentence(List<Reading> terms) {
        return terms.stream().map(Reading::label).collect(Collectors.joining(" + "));
    }

    Measure measure() {
        List<Need> needs = Stream.concat(numerator.stream(), denominator.stream())
                .map(Need::of)
                .toList();
        return new Measure(
                new Measure.MeasureText(
                        key, name, MeasureGroup.STUDIO, MeasureUnit.RATIO, 3, definition(), "more of the first"),
                needs,
                s -> Formula.Result.of(sum(s, numerator).over(sum(s, denominator))));
    }

    private static Estimate sum(Subject s, List<Reading> terms) {
        return terms.stream().map(s::get).reduce(Estimate.constant(0), Estimate::plus);
    }
}
