package studio.stancebook.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.measure.MeasureUnit;

class AssessmentDifferenceTest {

    private static Finding finding(String measure, @Nullable Double value, Verdict verdict) {
        Double uncertainty = value == null ? null : (Double) 0.01;
        return new Finding(measure, measure, MeasureUnit.RATIO, 2, value, uncertainty, null, verdict, List.of());
    }

    private static Assessment assessment(Finding... findings) {
        return new Assessment(List.of(findings));
    }

    private static List<String> measures(List<MeasureChange> changes) {
        return changes.stream().map(change -> change.either().measure()).toList();
    }

    @Test
    void findsNothingBetweenEqualAssessments() {
        Assessment one = assessment(
                finding("a", 1.0, new Verdict.Inside()), finding("b", null, new Verdict.NotMeasurable("x", List.of())));

        assertFalse(AssessmentDifference.between(one, one).any());
    }

    @Test
    void tellsAnotherVerdictFromAnotherValue() {
        AssessmentDifference difference = AssessmentDifference.between(
                assessment(
                        finding("a", 1.0, new Verdict.Inside()),
                        finding("b", 2.0, new Verdict.Inside()),
                        finding("c", 3.0, new Verdict.NoBand())),
                assessment(
                        finding("a", 1.0, new Verdict.TooClose()),
                        finding("b", 2.5, new Verdict.Inside()),
                        finding("c", 3.0, new Verdict.NoBand())));

        assertEquals(List.of("a"), measures(difference.verdicts()));
        assertEquals(List.of("b"), measures(difference.values()));
    }

    @Test
    void countsAMeasureThatCameOrWentAsAnotherVerdict() {
        AssessmentDifference difference = AssessmentDifference.between(
                assessment(finding("gone", 1.0, new Verdict.Inside())),
                assessment(finding("come", 1.0, new Verdict.Inside())));

        assertEquals(List.of("come", "gone"), measures(difference.verdicts()));
    }

    @Test
    void needsAFindingBeforeOrAfter() {
        assertThrows(IllegalArgumentException.class, () -> new MeasureChange(null, null));
    }
}
