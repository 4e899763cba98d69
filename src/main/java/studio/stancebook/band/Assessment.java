package studio.stancebook.band;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import studio.stancebook.measure.MeasureRegistry;

/**
 * Every measure of a side view held against the bands of a segment.
 *
 * @param findings in the order of the registry
 */
public record Assessment(List<Finding> findings) {

    public Assessment {
        findings = List.copyOf(findings);
    }

    public Optional<Finding> find(String measure) {
        return findings.stream()
                .filter(finding -> finding.measure().equals(measure))
                .findFirst();
    }

    /** How many measures were held against a band; two that repeat each other count once, here and in the other counts. */
    public int judged() {
        return count(Verdict.VerdictKind::judged);
    }

    public int outside() {
        return count(Verdict.VerdictKind::outside);
    }

    /** Too close to call, and not outside by the measure that repeats it. */
    public int tooClose() {
        return count(kind -> kind == Verdict.VerdictKind.TOO_CLOSE || kind.outside()) - outside();
    }

    private int count(Predicate<Verdict.VerdictKind> which) {
        return (int) findings.stream()
                .filter(finding -> which.test(finding.kind()))
                .map(finding -> MeasureRegistry.countedAs(finding.measure()))
                .distinct()
                .count();
    }
}
