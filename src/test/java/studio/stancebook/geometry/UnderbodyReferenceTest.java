package studio.stancebook.geometry;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Against {@code reference/angles_reference.json}, computed by another program from 49 CFR 523.2; see SOURCES.md. */
class UnderbodyReferenceTest {

    private static final double TOLERANCE_DEG = 1e-6;
    private static final double TOUCH_TOLERANCE_MM = 0.01;

    @TestFactory
    Stream<DynamicTest> everyCaseGivesTheReferenceAngles() throws IOException {
        JsonNode cases = read().get("cases");
        assertEquals(4, cases.size());
        return cases.valueStream()
                .map(one -> DynamicTest.dynamicTest(one.get("id").asString(), () -> check(one)));
    }

    /** ADR 43/04 (quoted): two planes at 7 degrees 38 minutes are what 33.33 mm of clearance per metre of wheelbase gives. */
    @Test
    void aPointAtMidWheelbaseBetweenPointWheelsGivesTheTextbookAngle() {
        UnderbodyAngles angles = UnderbodyAngles.of(
                3000, TyreArc.onGround(0, 0), TyreArc.onGround(3000, 0), List.of(new Point(1500, 100)));

        assertEquals(
                2 * Math.toDegrees(Math.atan(2 * 100 / 3000.0)),
                angles.rampDeg().orElseThrow(),
                1e-12);
        assertEquals(7 + 38 / 60.0, angles.rampDeg().orElseThrow(), 0.5 / 60);
    }

    private static void check(JsonNode one) {
        UnderbodyAngles angles = angles(one.get("inputs"));
        JsonNode expected = one.get("expected").get("slr_arc");
        assertAll(
                () -> checkOverhang(expected, "approach", angles.approachDeg(), angles.approachTouch()),
                () -> checkOverhang(expected, "departure", angles.departureDeg(), angles.departureTouch()),
                () -> assertEquals(
                        expected.get("ramp_deg").asDouble(), angles.rampDeg().orElseThrow(), TOLERANCE_DEG),
                () -> checkTouch(expected.get("ramp_point"), angles.rampTouch()),
                () -> assertEquals(
                        one.get("min_z_between_axle_planes_mm").asDouble(),
                        angles.groundClearanceMm().orElseThrow(),
                        1e-9));
    }

    private static void checkOverhang(JsonNode expected, String name, OptionalDouble deg, Optional<Point> touch) {
        boolean capped = expected.get(name + "_capped").asBoolean();
        assertEquals(capped, deg.isEmpty());
        if (!capped) {
            assertEquals(expected.get(name + "_deg").asDouble(), deg.orElseThrow(), TOLERANCE_DEG);
            checkTouch(expected.get(name + "_vertex"), touch);
        }
    }

    private static void checkTouch(JsonNode expected, Optional<Point> touch) {
        assertTrue(touch.isPresent());
        assertEquals(expected.get(0).asDouble(), touch.orElseThrow().x(), TOUCH_TOLERANCE_MM);
        assertEquals(expected.get(1).asDouble(), touch.orElseThrow().z(), TOUCH_TOLERANCE_MM);
    }

    private static UnderbodyAngles angles(JsonNode inputs) {
        double wheelbase = inputs.get("wheelbase_mm").asDouble();
        List<Point> underbody = inputs.get("underbody_polyline_mm")
                .valueStream()
                .map(point -> new Point(point.get(0).asDouble(), point.get(1).asDouble()))
                .toList();
        return UnderbodyAngles.of(
                wheelbase,
                TyreArc.onGround(0, radius(inputs.get("front_tyre"))),
                TyreArc.onGround(wheelbase, radius(inputs.get("rear_tyre"))),
                underbody);
    }

    private static double radius(JsonNode tyre) {
        return tyre.get("static_loaded_radius_mm").asDouble();
    }

    private static JsonNode read() throws IOException {
        try (InputStream file = UnderbodyReferenceTest.class.getResourceAsStream("/reference/angles_reference.json")) {
            return JsonMapper.shared().readTree(Objects.requireNonNull(file));
        }
    }
}
