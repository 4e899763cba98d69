package studio.stancebook.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Sketches;
import studio.stancebook.measure.Subject;
import studio.stancebook.moves.SingleMove;
import studio.stancebook.quantity.Interval;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

class VerdictLinesTest {

    private static final Map<String, List<SingleMove>> MOVES = Map.of(
            "wheelbase-in-wheels",
            List.of(
                    new SingleMove(Variable.TYRE_DIAMETER, 12.5, 0.02),
                    new SingleMove(variable("wheelbase"), -80, 0.03)),
            "screen-angle",
            List.of(new SingleMove(variable("cowl.x"), 30, 0.01)));

    private static Variable variable(String key) {
        return Variable.ofKey(key).orElseThrow();
    }

    /** Bands that give every kind of verdict. */
    private static Assessment everyKind() {
        Map<String, AppliedBand> bands = new HashMap<>();
        Subject subject = new Subject(
                Sketches.complete().toBuilder().without("overallWidth").build());
        int[] count = {0};
        MeasureRegistry.builtIn().all().forEach(measure -> {
            double y = measure.of(subject) instanceof Measured m ? m.value() : 0;
            double[][] choices = {{y - 10, y + 10}, {y + 5, y + 6}, {y - 6, y - 5}, {y, y + 9}, {y + 7, 1 / 0.0}};
            int choice = count[0]++ % (choices.length + 1);
            if (choice < choices.length) {
                bands.put(
                        measure.key(), new AppliedBand(count[0], new Interval(choices[choice][0], choices[choice][1])));
            }
        });
        return new Assessor(MeasureRegistry.builtIn()).assess(subject.set(), bands);
    }

    @Test
    void giveBackTheAssessmentTheyWereMadeFrom() {
        Assessment assessment = everyKind();
        Set<Verdict.VerdictKind> kinds = new HashSet<>();
        assessment.findings().forEach(finding -> kinds.add(finding.kind()));
        assertEquals(Set.of(Verdict.VerdictKind.values()), kinds, "every kind of verdict is among them");

        JsonMapper json = JsonMapper.builder().build();
        String text = json.writeValueAsString(VerdictLines.of(assessment, MOVES));
        List<VerdictLine> lines = json.readValue(text, new TypeReference<>() {});
        assertEquals(assessment, VerdictLines.read(lines));
        assertEquals(MOVES, VerdictLines.moves(lines));
    }

    @Test
    void writeAnOpenSideAndAMissingValueAsNull() {
        for (VerdictLine line : VerdictLines.of(everyKind(), Map.of())) {
            if (line.verdict().equals("not-measurable")) {
                assertNull(line.value());
                assertNull(line.uncertainty());
            }
            if (line.verdict().equals("no-band")) {
                assertNull(line.lower());
                assertNull(line.upper());
                assertNull(line.bandVersion());
            }
        }
    }
}
