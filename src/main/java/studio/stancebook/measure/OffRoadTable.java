package studio.stancebook.measure;

import java.util.List;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.geometry.CriterionOutcome;
import studio.stancebook.geometry.OffRoadCriteria;
import studio.stancebook.geometry.OffRoadDimensions;
import studio.stancebook.geometry.OffRoadJudgement;
import studio.stancebook.geometry.OffRoadQuantity;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/**
 * One regulation's off-road criteria as a page shows them.
 *
 * @param key ends the message key of its name
 * @param verdict ends the message key of what the count comes to
 */
public record OffRoadTable(
        String key,
        String source,
        int met,
        int needed,
        int all,
        String verdict,
        List<CriterionRow> lines,
        List<String> notCheckedKeys) {

    /**
     * One criterion.
     *
     * @param quantityKeys message keys of what is asked
     * @param outcome {@code met}, {@code missed} or {@code unmeasured}
     * @param value what was measured, with its unit; empty where nothing was or nothing limits it
     * @param by how much is missed, with its unit
     * @param reasons what must be said beside it
     */
    public record CriterionRow(
            List<String> quantityKeys, String least, String value, String outcome, String by, List<String> reasons) {}

    /** Every definition. */
    public static List<OffRoadTable> of(DimensionSet set) {
        OffRoadDimensions dimensions = OffRoadReading.of(set);
        return OffRoadCriteria.all().stream()
                .map(criteria -> of(criteria.judge(dimensions)))
                .toList();
    }

    private static OffRoadTable of(OffRoadJudgement judgement) {
        OffRoadCriteria criteria = judgement.criteria();
        return new OffRoadTable(
                criteria.key(),
                criteria.source(),
                judgement.metCount(),
                criteria.needed(),
                criteria.criteria().size(),
                switch (judgement.verdict()) {
                    case ENOUGH -> "enough";
                    case TOO_FEW -> "too-few";
                    case OPEN -> "open";
                },
                judgement.lines().stream().map(OffRoadTable::line).toList(),
                criteria.notCheckedKeys());
    }

    private static CriterionRow line(OffRoadJudgement.CriterionResult line) {
        boolean degrees = line.criterion().unit().equals("deg");
        List<String> quantities = line.criterion().quantities().stream()
                .map(OffRoadQuantity::key)
                .map(key -> "geometry.off-road.quantity." + key)
                .toList();
        String least = text(line.criterion().least(), 0, degrees);
        String value = line.value().isPresent() && Double.isFinite(line.value().getAsDouble())
                ? text(line.value().getAsDouble(), 1, degrees)
                : "";
        String by = line.outcome() instanceof CriterionOutcome.Missed missed ? text(missed.by(), 1, degrees) : "";
        return new CriterionRow(quantities, least, value, outcome(line.outcome()), by, line.reasons());
    }

    private static String text(double value, int decimals, boolean degrees) {
        return degrees ? NumberText.plain(value, decimals) + "°" : ShownUnits.text(value, decimals);
    }

    private static String outcome(CriterionOutcome outcome) {
        if (outcome instanceof CriterionOutcome.Missed) {
            return "missed";
        }
        return outcome instanceof CriterionOutcome.Met ? "met" : "unmeasured";
    }
}
