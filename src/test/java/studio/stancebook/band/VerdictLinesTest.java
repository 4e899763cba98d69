package studio.stancebook.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.quantity.Interval;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

class VerdictLinesTest {

    /** Bands that give every kind of verdict. */
    private static Assessment everyKind() {
        Map<String, AppliedBand> bands = new HashMap<>();
        Subject subject = new Subject(
                SketchForMoves.set().toBuilder().without("overallWidth").build());
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
        Set<Verdict.Kind> kinds = new HashSet<>();
        assessment.findings().forEach(finding -> kinds.add(finding.kind()));
        assertEquals(Set.of(Verdict.Kind.values()), kinds, "every kind of verdict is among them");

        JsonMapper json = JsonMapper.builder().build();
        String text = json.writeValueAsString(VerdictLines.of(assessment));
        assertEquals(assessment, VerdictLines.read(json.readValue(text, new TypeReference<>() {})));
    }

    @Test
    void writeAnOpenSideAndAMissingValueAsNull() {
        for (VerdictLine line : VerdictLines.of(everyKind())) {
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
