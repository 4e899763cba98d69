package studio.stancebook.tyre;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Against {@code reference/tyre_designations.json}; what is from memory there is said to be so in its SOURCES.md. */
class TyreReferenceTest {

    private static final JsonNode REFERENCE = read();

    @TestFactory
    Stream<DynamicTest> metricSizesGiveTheDiametersByRule() {
        return REFERENCE
                .get("metric")
                .valueStream()
                .map(size -> DynamicTest.dynamicTest(size.get("designation").asString(), () -> checkMetric(size)));
    }

    @TestFactory
    Stream<DynamicTest> flotationSizesGiveTheNominalDiameter() {
        return REFERENCE
                .get("flotation")
                .valueStream()
                .map(size -> DynamicTest.dynamicTest(size.get("designation").asString(), () -> checkFlotation(size)));
    }

    @TestFactory
    Stream<DynamicTest> nonsenseIsRefusedWithTheValue() {
        return REFERENCE
                .get("should_not_parse")
                .valueStream()
                .map(JsonNode::asString)
                .map(text -> DynamicTest.dynamicTest(text, () -> checkRefused(text)));
    }

    @TestFactory
    Stream<DynamicTest> rimCodesGiveTheNominalRimDiameters() {
        return Stream.of("rim_code_mm", "rim_code_mm_half_inch_unverified")
                .flatMap(table -> REFERENCE.get(table).properties().stream())
                .map(rim -> DynamicTest.dynamicTest(
                        rim.getKey(),
                        () -> assertEquals(
                                rim.getValue().asDouble(),
                                new RimCode(Double.parseDouble(rim.getKey())).nominalDiameterMm())));
    }

    /** Maker's size sheets, inches to 0.1: real tyres lie within about 1.3 percent of the rule. */
    @TestFactory
    Stream<DynamicTest> publishedDiametersLieWithinTheDefaultUncertainty() {
        return REFERENCE
                .get("metric")
                .valueStream()
                .filter(size -> size.get("published_from_memory").isObject())
                .map(size -> DynamicTest.dynamicTest(size.get("designation").asString(), () -> checkPublished(size)));
    }

    private static void checkMetric(JsonNode expected) {
        TyreDesignation read = TyreDesignation.parse(expected.get("designation").asString());
        assertAll(
                () -> assertEquals("metric", read.notation()),
                () -> assertEquals(expected.get("section_width_mm").asDouble(), read.sectionWidthMm()),
                () -> assertEquals(
                        expected.get("aspect_ratio").asDouble(),
                        read.aspectRatio().orElseThrow()),
                () -> assertEquals(expected.get("rim_code").asDouble(), read.rimCode()),
                () -> assertEquals(expected.get("nominal_rim_diameter_mm").asDouble(), read.rimDiameterMm()),
                () -> assertEquals(expected.get("section_height_rounded_mm").asDouble(), read.sectionHeightMm()),
                () -> assertEquals(expected.get("design_overall_diameter_mm").asDouble(), read.overallDiameterMm()),
                () -> assertEquals(expected.get("unrounded_diameter_mm").asDouble(), read.unroundedDiameterMm(), 1e-9),
                () -> assertEquals(service(expected), read.serviceDescription().orElse("")),
                () -> assertEquals(expected.get("designation").asString(), read.text()));
    }

    private static String service(JsonNode expected) {
        JsonNode loadIndex = expected.get("load_index");
        return loadIndex.isNull()
                ? ""
                : loadIndex.asString() + expected.get("speed_symbol").asString();
    }

    private static void checkFlotation(JsonNode expected) {
        TyreDesignation read = TyreDesignation.parse(expected.get("designation").asString());
        assertAll(
                () -> assertEquals("flotation", read.notation()),
                () -> assertEquals(expected.get("section_width_in").asDouble() * 25.4, read.sectionWidthMm(), 1e-9),
                () -> assertEquals(expected.get("rim_code").asDouble(), read.rimCode()),
                () -> assertEquals(
                        expected.get("nominal_overall_diameter_mm").asDouble(), read.overallDiameterMm(), 1e-9),
                () -> assertFalse(read.tabulatedDiameterMm().isPresent()),
                () -> assertFalse(read.aspectRatio().isPresent()));
    }

    private static void checkRefused(String text) {
        UnknownTyreDesignation refusal = assertThrows(UnknownTyreDesignation.class, () -> TyreDesignation.parse(text));
        assertTrue(refusal.detail().contains("'" + text + "'"), refusal.detail());
        assertTrue(refusal.detail().contains("accepted"), refusal.detail());
    }

    private static void checkPublished(JsonNode size) {
        double ruleMm =
                TyreDesignation.parse(size.get("designation").asString()).overallDiameterMm();
        size.get("published_from_memory").properties().stream()
                .filter(entry ->
                        entry.getKey().endsWith("_mm") && entry.getValue().isNumber())
                .forEach(entry -> assertEquals(1, entry.getValue().asDouble() / ruleMm, 0.013, entry.getKey()));
    }

    private static JsonNode read() {
        try (InputStream file = TyreReferenceTest.class.getResourceAsStream("/reference/tyre_designations.json")) {
            return JsonMapper.shared().readTree(Objects.requireNonNull(file));
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
