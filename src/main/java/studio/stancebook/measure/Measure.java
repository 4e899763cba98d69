package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Scale;
import studio.stancebook.geometry.DegenerateShape;

/** One proportion: what it is called, what it means, what it needs and how it is computed. */
public final class Measure {

    private final String key;
    private final String name;
    private final MeasureGroup group;
    private final MeasureUnit unit;
    private final int decimals;
    private final String definition;
    private final String more;
    private final List<Need> needs;
    private final Formula formula;

    Measure(MeasureText text, List<Need> needs, Formula formula) {
        this.key = text.key();
        this.name = text.name();
        this.group = text.group();
        this.unit = text.unit();
        this.decimals = text.decimals();
        this.definition = text.definition();
        this.more = text.more();
        this.needs = List.copyOf(needs);
        this.formula = formula;
    }

    /** The name in JSON and in addresses, such as {@code wheelbase-in-wheels}. */
    public String key() {
        return key;
    }

    /** The name on pages. */
    public String name() {
        return name;
    }

    public MeasureGroup group() {
        return group;
    }

    public MeasureUnit unit() {
        return unit;
    }

    /** How many decimals a page shows. */
    public int decimals() {
        return decimals;
    }

    /** The definition in one sentence. */
    public String definition() {
        return definition;
    }

    /** What a larger value means for the design, in a few words. */
    public String more() {
        return more;
    }

    /** What has to be recorded, one entry for each thing needed, in JSON names. */
    public List<String> needs() {
        return needs.stream().map(Need::takenFrom).distinct().toList();
    }

    /** The value for a side view, with its uncertainty, or what is missing. */
    public MeasureValue of(Subject subject) {
        if (unit == MeasureUnit.SQUARE_METRES && subject.set().scale() == Scale.UNSCALED) {
            return NotMeasurable.because(NotMeasurable.Why.UNSCALED);
        }
        List<String> missing = missing(subject);
        if (!missing.isEmpty()) {
            return NotMeasurable.missing(missing);
        }
        return judged(computed(subject), subject);
    }

    private Formula.Result computed(Subject subject) {
        try {
            return formula.apply(subject);
        } catch (DegenerateShape nothingToCompare) {
            return Formula.Result.none(NotMeasurable.Why.DEGENERATE);
        }
    }

    private List<String> missing(Subject subject) {
        List<String> missing = new ArrayList<>(0);
        for (Need need : needs) {
            if (!need.met(subject) && !missing.contains(need.takenFrom())) {
                missing.add(need.takenFrom());
            }
        }
        return missing;
    }

    private MeasureValue judged(Formula.Result result, Subject subject) {
        Estimate estimate = result.estimate();
        if (estimate == null) {
            return result.none() == null ? NotMeasurable.because(NotMeasurable.Why.DEGENERATE) : result.none();
        }
        double uncertainty = estimate.uncertainty(subject.set()::standardUncertainty);
        if (!Double.isFinite(estimate.value()) || !Double.isFinite(uncertainty)) {
            return NotMeasurable.because(NotMeasurable.Why.DEGENERATE);
        }
        return new Measured(estimate, uncertainty, withTyreNotes(result.notes(), subject));
    }

    private Set<Note> withTyreNotes(Set<Note> notes, Subject subject) {
        boolean nominal = subject.nominalTyres() && needs.stream().anyMatch(Need::ofTyre);
        boolean unloaded = needs.stream().anyMatch(need -> need.onUnloadedTyre(subject.set()));
        if (!nominal && !unloaded) {
            return notes;
        }
        Set<Note> all = new HashSet<>(notes);
        if (nominal) {
            all.add(Note.NOMINAL_DIAMETER);
        }
        if (unloaded) {
            all.add(Note.UNLOADED_TYRE);
        }
        return all;
    }

    @Override
    public String toString() {
        return key;
    }

    /** The words of a measure. */
    record MeasureText(
            String key,
            String name,
            MeasureGroup group,
            MeasureUnit unit,
            int decimals,
            String definition,
            String more) {}
}
