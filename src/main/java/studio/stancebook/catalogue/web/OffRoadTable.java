package studio.stancebook.catalogue.web;

import java.util.List;
import java.util.stream.Stream;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.geometry.CriterionOutcome;
import studio.stancebook.geometry.OffRoadCriteria;
import studio.stancebook.geometry.OffRoadJudgement;
import studio.stancebook.geometry.OffRoadQuantity;
import studio.stancebook.measure.OffRoadReading;
import studio.stancebook.quantity.NumberText;

/**
 * One regulation's off-road criteria as a page shows them.
 *
 * @param key ends the message key of its name
 * @param verdict ends the message key of what the count comes to
 */
record OffRoadTable(
        String key,
        String source,
        int met,
        int needed,
        int all,
        String verdict,
        List<Line> lines,
        List<String> notCheckedKeys) {

    /**
     * One criterion.
     *
     * @param quantityKeys message keys of what is asked
     * @param outcome {@code met}, {@code missed} or {@code unmeasured}
     * @param by how much is missed, with its unit
     */
    record Line(List<String> quantityKeys, String least, String outcome, String by) {}

    static List<OffRoadTable> of(DimensionSet set) {
        return Stream.of(OffRoadCriteria.unitedStates(), OffRoadCriteria.europeanUnion())
                .map(criteria -> of(criteria.judge(OffRoadReading.of(set))))
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

    private static Line line(OffRoadJudgement.Line line) {
        String unit = line.criterion().unit().equals("deg") ? "°" : " mm";
        List<String> quantities = line.criterion().quantities().stream()
                .map(OffRoadQuantity::key)
                .map(key -> "geometry.off-road.quantity." + key)
                .toList();
        String least = NumberText.plain(line.criterion().least(), 0) + unit;
        CriterionOutcome outcome = line.outcome();
        if (outcome instanceof CriterionOutcome.Missed missed) {
            return new Line(quantities, least, "missed", NumberText.plain(missed.by(), 1) + unit);
        }
        return new Line(quantities, least, outcome instanceof CriterionOutcome.Met ? "met" : "unmeasured", "");
    }
}
