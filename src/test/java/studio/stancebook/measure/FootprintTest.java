package studio.stancebook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Worked cases of 49 CFR 523.2 in {@code reference/footprint.json}; the rounding rule there is from memory. */
class FootprintTest {

    @Test
    void roundsAsTheRegulationDoes() {
        JsonNode cases = new JsonMapper()
                .readTree(getClass().getResourceAsStream("/reference/footprint.json"))
                .get("cases");

        assertTrue(cases.size() > 3);
        for (JsonNode example : cases) {
            assertEquals(
                    example.get("footprint_sqft_0_1").asDouble(),
                    Footprint.squareFeet(
                            example.get("wheelbase_mm").asDouble(),
                            example.get("track_front_mm").asDouble(),
                            example.get("track_rear_mm").asDouble()),
                    1e-9,
                    example.toString());
        }
    }
}
