package studio.stancebook.proposal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Finding;

/**
 * Where two assessments differ.
 *
 * @param verdicts measures with another verdict
 * @param values measures with another value and the same verdict
 */
public record AssessmentDifference(List<MeasureChange> verdicts, List<MeasureChange> values) {

    public AssessmentDifference {
        verdicts = List.copyOf(verdicts);
        values = List.copyOf(values);
    }

    /** In the order of the later assessment. */
    public static AssessmentDifference between(Assessment before, Assessment after) {
        List<MeasureChange> verdicts = new ArrayList<>();
        List<MeasureChange> values = new ArrayList<>();
        for (String measure : measures(after, before)) {
            MeasureChange change = new MeasureChange(
                    before.find(measure).orElse(null), after.find(measure).orElse(null));
            if (change.verdictChanged()) {
                verdicts.add(change);
            } else if (!sameValue(change.before(), change.after())) {
                values.add(change);
            }
        }
        return new AssessmentDifference(verdicts, values);
    }

    private static Set<String> measures(Assessment after, Assessment before) {
        Set<String> measures = new LinkedHashSet<>();
        after.findings().forEach(finding -> measures.add(finding.measure()));
        before.findings().forEach(finding -> measures.add(finding.measure()));
        return measures;
    }

    private static boolean sameValue(@Nullable Finding before, @Nullable Finding after) {
        Double from = before == null ? null : before.value();
        Double to = after == null ? null : after.value();
        return from == null ? to == null : from.equals(to);
    }

    public boolean any() {
        return !verdicts.isEmpty() || !values.isEmpty();
    }
}
