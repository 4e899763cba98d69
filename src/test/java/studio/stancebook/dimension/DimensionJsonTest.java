package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import studio.stancebook.problem.FieldError;
import tools.jackson.databind.json.JsonMapper;

class DimensionJsonTest {

    private static final String EXAMPLE = """
            {"frontTyre":"265/70R17","rearTyre":"265/70R17","wheelbase":2850,"overallLength":4800,"frontOverhang":850,
             "rearOverhang":1100,"overallHeight":1850,"overallWidth":1930,"groundClearance":230,"cowl":[520,1160],
             "screenTop":[1050.5,1760],"underbody":[[-850,560],[-600,330]],"uncertainties":{"wheelbase":2},
             "origins":{"cowl":"measured"}}""";

    private static DimensionSet read(String json) {
        return DimensionJson.read(new JsonMapper().readValue(json, Map.class), Origin.SPECIFICATION);
    }

    private static List<FieldError> errorsOf(String json) {
        return assertThrows(ImpossibleDimensions.class, () -> read(json)).errors();
    }

    @Test
    void readsTheExampleOfTheInterface() {
        DimensionSet set = read(EXAMPLE);

        assertEquals(2850, set.scalar(Dimension.WHEELBASE).orElseThrow());
        assertEquals(1050.5, set.landmark(Landmark.SCREEN_TOP).orElseThrow().x());
        assertEquals(2, set.points(Polyline.UNDERBODY).size());
        assertEquals(2, set.standardUncertainty(Variable.of(Dimension.WHEELBASE)));
        assertEquals(Origin.MEASURED, set.originOf("cowl"));
        assertEquals(Origin.SPECIFICATION, set.originOf("overallLength"));
    }

    @Test
    void writesWhatItReads() {
        DimensionSet set = read(EXAMPLE);

        assertEquals(set, DimensionJson.read(DimensionJson.write(set), Origin.SPECIFICATION));
        assertTrue(new JsonMapper().writeValueAsString(DimensionJson.write(set)).contains("\"wheelbase\":2850,"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"wheelbase\":\"2850\"} | dimensions.wheelbase | A number is needed, not \"2850\".",
                "{\"wheelbase\":2850,\"bootLid\":3} | dimensions.bootLid | There is no dimension, landmark or polyline of this"
                        + " name.",
                "{\"wheelbase\":2850,\"cowl\":[1]} | dimensions.cowl | A point is [x, z] in mm, not a list of 1.",
                "{\"wheelbase\":2850,\"origins\":{\"cowl\":\"rumour\"}} | dimensions.origins.cowl | \"rumour\" is none of"
                        + " measured, drawing, specification, derived.",
                "{\"wheelbase\":2850,\"scale\":\"feet\"} | dimensions.scale | \"feet\" is none of millimetres, unscaled.",
                "{} | dimensions.wheelbase | The wheelbase (L101) is needed, in mm."
            })
    void namesFieldValueAndWhatIsAccepted(String json, String field, String message) {
        assertEquals(List.of(new FieldError(field, message)), errorsOf(json));
    }

    @Test
    void collectsEveryProblemBeforeItRefuses() {
        assertEquals(
                3,
                errorsOf("{\"wheelbase\":true,\"cowl\":7,\"underbody\":[[0,0]]}")
                        .size());
    }

    @Test
    void marksOnlyWhatChangedAsNewlyRecorded() {
        Instant then = Instant.parse("2026-01-05T08:00:00Z");
        Instant now = Instant.parse("2026-02-05T08:00:00Z");
        DimensionSet before = read(EXAMPLE).markedSince(null, new Recorded(7L, "Ada", then));
        DimensionSet after = before.toBuilder()
                .set(Dimension.WHEELBASE, 2900)
                .build()
                .markedSince(before, new Recorded(null, "Ben", now));

        assertEquals(new Recorded(null, "Ben", now), after.recorded().get("wheelbase"));
        assertEquals(new Recorded(7L, "Ada", then), after.recorded().get("cowl"));
        assertEquals(
                after,
                DimensionJson.withRecorded(
                        DimensionJson.read(DimensionJson.write(after), Origin.SPECIFICATION),
                        DimensionJson.writeRecorded(after)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2850 | mm | 2850",
                "2850,5 | mm | 2850.5",
                "112.2 in | mm | 2849.88",
                "112.2 | in | 2849.88",
                "112.2\" | mm | 2849.88",
                "28° | deg | 28",
                "2.85 m | mm | 2850"
            })
    void readsLengthsAsPeopleTypeThem(String text, String bareUnit, double expected) {
        assertEquals(expected, LengthText.parse(text, bareUnit).number().doubleValue(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"abc", "1.2.3", "1e5", "NaN", "12 ft", "''"})
    void takesNothingElseForALength(String text) {
        assertNull(LengthText.parse(text, "mm").number());
    }
}
