package studio.stancebook.measure;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.geometry.CriterionOutcome;
import studio.stancebook.geometry.OffRoadCriteria;
import studio.stancebook.geometry.OffRoadDimensions;
import studio.stancebook.geometry.OffRoadJudgement;

/**
 * The off-road criteria of every regulation as the API tells them.
 *
 * @param caution that belongs beside every judgement
 */
public record OffRoadAnswer(List<Scheme> schemes, String caution) {

    /**
     * One regulation.
     *
     * @param scheme {@code us-49-cfr-523-5} or {@code eu-m1g}
     * @param needed how many criteria must be met
     * @param met how many are
     * @param notChecked conditions that a side view cannot show
     */
    public record Scheme(String scheme, int needed, int met, List<Criterion> criteria, List<String> notChecked) {}

    /**
     * One criterion.
     *
     * @param value what was measured, the least where it has several quantities; null where nothing was or nothing limits it
     * @param unit {@code deg} or {@code mm}
     * @param outcome {@code met}, {@code missed} or {@code not-measurable}
     * @param by how much is missed, above 0; null where nothing is
     * @param reason what must be said beside it; null where there is nothing to say
     */
    public record Criterion(
            String quantity,
            @Nullable Double value,
            String unit,
            double atLeast,
            String outcome,
            @Nullable Double by,
            @Nullable String reason) {}

    /** @param words the words of a message key */
    public static OffRoadAnswer of(DimensionSet set, UnaryOperator<String> words) {
        OffRoadDimensions dimensions = OffRoadReading.of(set);
        return new OffRoadAnswer(
                OffRoadCriteria.all().stream()
                        .map(criteria -> scheme(criteria.judge(dimensions), words))
                        .toList(),
                words.apply(OffRoadCriteria.CAUTION_KEY));
    }

    private static Scheme scheme(OffRoadJudgement judgement, UnaryOperator<String> words) {
        OffRoadCriteria criteria = judgement.criteria();
        return new Scheme(
                criteria.key(),
                criteria.needed(),
                judgement.metCount(),
                judgement.lines().stream().map(OffRoadAnswer::criterion).toList(),
                criteria.notCheckedKeys().stream().map(words).toList());
    }

    private static Criterion criterion(OffRoadJudgement.CriterionResult line) {
        return new Criterion(
                line.criterion().key(),
                finite(line.value()),
                line.criterion().unit(),
                line.criterion().least(),
                outcome(line.outcome()),
                line.outcome() instanceof CriterionOutcome.Missed missed ? (Double) missed.by() : null,
                line.reasons().isEmpty() ? null : String.join("; ", line.reasons()));
    }

    private static @Nullable Double finite(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? (Double) value.getAsDouble() : null;
    }

    private static String outcome(CriterionOutcome outcome) {
        if (outcome instanceof CriterionOutcome.Met) {
            return "met";
        }
        return outcome instanceof CriterionOutcome.Missed ? "missed" : "not-measurable";
    }
}
