package studio.stancebook.band;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

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

    /** How many measures were held against a band. */
    public int judged() {
        return count(Verdict.Kind::judged);
    }

    public int outside() {
        return count(Verdict.Kind::outside);
    }

    public int tooClose() {
        return count(kind -> kind == Verdict.Kind.TOO_CLOSE);
    }

    private int count(Predicate<Verdict.Kind> which) {
        return (int) findings.stream().map(Finding::kind).filter(which).count();
    }
}
