package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Unit;
import studio.stancebook.exchange.mapping.Target.OfTyre;
import studio.stancebook.exchange.mapping.Target.TyrePart;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.tyre.TyreDesignation;

/** Guesses what the columns of a table hold, from their headings and some of their cells. Unsure: no guess. */
public final class Guesses {

    private Guesses() {}

    /**
     * A guess for each column; empty where there is none.
     *
     * @param headings of the table
     * @param samples some cells of each column that are not blank
     */
    public static List<Optional<Guess>> of(List<String> headings, List<List<String>> samples) {
        List<Optional<Guess>> guesses = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            guesses.add(guess(HeadingWords.of(headings.get(i)), samples.get(i)));
        }
        splitTyres(guesses, samples);
        dropDoubled(guesses);
        return guesses;
    }

    private static Optional<Guess> guess(HeadingWords heading, List<String> samples) {
        return Vocabulary.target(heading).flatMap(target -> {
            Unit kept = target.unit();
            if (kept == null || kept == Unit.COUNT) {
                return believable(target, samples) && heading.unit() == null
                        ? Optional.of(new Guess(target, ColumnUnit.NONE))
                        : Optional.empty();
            }
            ColumnUnit unit = heading.unit() == null ? unit(target, samples) : heading.unit();
            return unit == null || MappingJson.fits(target, unit)
                    ? Optional.of(new Guess(target, unit))
                    : Optional.empty();
        });
    }

    /** An "origin" is a country in other people's tables. */
    private static boolean believable(Target target, List<String> samples) {
        boolean origin = target instanceof Target.OfField field && field.what() == Field.ORIGIN;
        return !origin
                || samples.stream().allMatch(sample -> Origin.ofKey(sample).isPresent());
    }

    /** The only unit in which all samples are plausible; the natural one where there is nothing to tell by. */
    private static @Nullable ColumnUnit unit(Target target, List<String> samples) {
        Unit kept = target.unit();
        if (!(target instanceof Target.OfScalar scalar) || kept == null) {
            return kept == null ? ColumnUnit.NONE : ColumnUnit.natural(kept);
        }
        List<ColumnUnit> plausible = ColumnUnit.of(kept).stream()
                .filter(unit -> unit != ColumnUnit.DEG_FROM_VERTICAL)
                .filter(unit -> samples.stream().allMatch(sample -> isPlausible(scalar, unit, sample)))
                .toList();
        ColumnUnit natural = ColumnUnit.natural(kept);
        return plausible.contains(natural) ? natural : plausible.size() == 1 ? plausible.get(0) : null;
    }

    private static boolean isPlausible(Target.OfScalar scalar, ColumnUnit unit, String sample) {
        CellNumber reading = CellNumber.of(sample, false);
        OptionalDouble value = reading.number() == null || reading.unit() != null
                ? OptionalDouble.empty()
                : OptionalDouble.of(unit.toKept(reading.number()));
        return value.isEmpty()
                || scalar.dimensions().stream()
                        .allMatch(dimension -> dimension.range().contains(value.getAsDouble()));
    }

    /** A tyre column beside a rim column is half a designation, unless it holds whole ones; a rim alone tells nothing. */
    private static void splitTyres(List<Optional<Guess>> guesses, List<List<String>> samples) {
        int whole = indexOf(guesses, TyrePart.WHOLE);
        int rim = indexOf(guesses, TyrePart.RIM);
        if (rim < 0) {
            return;
        }
        if (whole < 0 || samples.get(whole).stream().anyMatch(Guesses::isDesignation)) {
            guesses.set(rim, Optional.empty());
        } else {
            guesses.set(whole, Targets.dimension(Targets.TYRE, "size").map(t -> new Guess(t, ColumnUnit.NONE)));
        }
    }

    private static int indexOf(List<Optional<Guess>> guesses, TyrePart part) {
        for (int i = 0; i < guesses.size(); i++) {
            Target target = guesses.get(i).map(Guess::target).orElse(null);
            if (target instanceof OfTyre tyre
                    && tyre.what() == part
                    && tyre.name().equals(Targets.TYRE)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isDesignation(String sample) {
        try {
            return !TyreDesignation.parse(sample).text().isEmpty();
        } catch (studio.stancebook.problem.Refusal half) {
            return false;
        }
    }

    /** Two columns that seem to hold the same: which one is meant is for a person to say. */
    private static void dropDoubled(List<Optional<Guess>> guesses) {
        Map<String, Integer> times = new HashMap<>();
        guesses.forEach(guess ->
                guess.ifPresent(g -> g.target().sets().forEach(value -> times.merge(value, 1, Integer::sum))));
        Set<String> doubled = new HashSet<>();
        times.forEach((value, count) -> {
            if (count > 1) {
                doubled.add(value);
            }
        });
        guesses.replaceAll(guess -> guess.filter(g -> g.target().sets().stream().noneMatch(doubled::contains)));
    }

    /**
     * The mapping that the guesses make.
     *
     * @throws ImpossibleMapping if a unit is not clear, or name, segment or wheelbase were not found
     */
    public static Mapping mapping(List<String> headings, List<Optional<Guess>> guesses) {
        List<ColumnUse> uses = new ArrayList<>();
        List<FieldError> errors = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            Guess guess = guesses.get(i).orElse(null);
            if (guess != null && guess.unit() == null) {
                errors.add(new FieldError(
                        "mapping." + TextLimit.shown(headings.get(i)),
                        "The unit of the column \"" + TextLimit.shown(headings.get(i))
                                + "\" is not clear; send a mapping that names it."));
            } else if (guess != null && guess.unit() != null) {
                uses.add(new ColumnUse(i, headings.get(i), guess.target(), guess.unit()));
            }
        }
        if (!errors.isEmpty()) {
            throw new ImpossibleMapping(ErrorList.of(errors));
        }
        return new Mapping(uses);
    }
}
