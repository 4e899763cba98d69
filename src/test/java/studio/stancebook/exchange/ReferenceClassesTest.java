package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.Dimension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Real tables brought in whole, and the statistics of their classes against those that R computed from the same tables
 * (see {@code reference/SOURCES.md}). The segments are named after the test so that others do not meet them.
 */
abstract class ReferenceClassesTest {

    private static final JsonMapper JSON = new JsonMapper();

    private static final String CAR90 = """
            {"row":{"field":"name"},"type":{"field":"segment"},
             "wheelbase_in":{"dimension":"wheelbase","unit":"in"},"length_in":{"dimension":"overallLength","unit":"in"},
             "width_in":{"dimension":"overallWidth","unit":"in"},"height_in":{"dimension":"overallHeight","unit":"in"},
             "weight_lb":{"dimension":"kerbMass","unit":"lb"},
             "tire":{"dimension":"tyre","part":"size"},"rim":{"dimension":"tyre","part":"rim"}}
            """;

    private static final String CARS93 = """
            {"row":{"field":"name"},"type":{"field":"segment"},
             "wheelbase_in":{"dimension":"wheelbase","unit":"in"},"length_in":{"dimension":"overallLength","unit":"in"},
             "width_in":{"dimension":"overallWidth","unit":"in"}}
            """;

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = ReferenceClassesTest.class.getResourceAsStream("/reference/" + name)) {
            return in.readAllBytes();
        }
    }

    /** The table with its classes renamed, so that they become segments of this test. */
    private JsonNode bringIn(String file, String mapping, String prefix) throws IOException {
        String text = new String(resource(file), java.nio.charset.StandardCharsets.UTF_8)
                .replaceAll("(?m)^(\\d+),([A-Z])", "$1," + prefix + " $2");
        return Sent.by(studio.api(Role.LEAD), text)
                .mapped(mapping)
                .with("partial", true)
                .with("createSegments", true)
                .expect(200);
    }

    private Map<String, JsonNode> statistics(String segment) {
        byte[] answer = studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/segments/{key}/statistics?quantileType=7", segment)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody();
        Map<String, JsonNode> byMeasure = new LinkedHashMap<>();
        JSON.readTree(answer)
                .get("measures")
                .forEach(m -> byMeasure.put(m.get("measure").asString(), m));
        return byMeasure;
    }

    private static void assertEqual(JsonNode measured, JsonNode reference, String what) {
        assertThat(measured.get("n").asInt())
                .as(what)
                .isEqualTo(reference.get("n").asInt());
        Map<String, String> names = Map.of(
                "mean",
                "mean",
                "sd",
                "sd",
                "min",
                "min",
                "max",
                "max",
                "median",
                "median",
                "p5",
                "q05_type7",
                "p25",
                "q25_type7",
                "p75",
                "q75_type7",
                "p95",
                "q95_type7");
        names.forEach((ours, theirs) -> {
            if (reference.has(theirs)) {
                assertThat(measured.get(ours).asDouble())
                        .as(what + " " + ours)
                        .isCloseTo(reference.get(theirs).asDouble(), Percentage.withPercentage(1e-7));
            }
        });
        if (reference.has("mad_raw")) {
            assertThat(measured.get("mad").asDouble())
                    .as(what + " mad")
                    .isCloseTo(reference.get("mad_raw").asDouble(), within(1e-11));
        }
    }

    private static List<JsonNode> problems(JsonNode report, String severity) {
        return StreamSupport.stream(report.get("problems").spliterator(), false)
                .filter(problem -> problem.get("severity").asString().equals(severity))
                .toList();
    }

    @Test
    void carsOf1990ComeInAndHaveTheStatisticsThatRFound() throws IOException {
        JsonNode report = bringIn("car90.csv", CAR90, "c90");

        assertThat(report.get("rows").asInt()).isEqualTo(111);
        assertThat(report.get("accepted").asInt()).isEqualTo(105);
        assertThat(report.get("imported").asInt()).isEqualTo(105);
        assertThat(problems(report, "error"))
                .extracting(problem ->
                        problem.get("row").asInt() + " " + problem.get("column").asString() + ": "
                                + problem.get("message").asString())
                .containsExactly(
                        "11 type: The row has no segment.",
                        "16 type: The row has no segment.",
                        "22 type: The row has no segment.",
                        "36 type: The row has no segment.",
                        "62 type: The row has no segment.",
                        "88 type: The row has no segment.");
        assertThat(problems(report, "query"))
                .filteredOn(problem -> problem.get("column").asString().equals("tire, rim"))
                .extracting(problem ->
                        problem.get("row").asInt() + " " + problem.get("value").asString())
                .containsExactly("41 145R12", "104 155R13", "110 185R14");

        JsonNode classes = JSON.readTree(resource("car90_reference.json")).get("classes");
        JsonNode overTyre = JSON.readTree(resource("car90_wheelbase_over_tyre.json"));
        for (String type : List.of("Compact", "Large", "Medium", "Small", "Sporty", "Van")) {
            Map<String, JsonNode> measured = statistics("c90-" + type.toLowerCase(java.util.Locale.ROOT));
            JsonNode reference = classes.get(type);
            assertEqual(measured.get("wheelbase-share"), reference.get("wheelbase_over_length"), type);
            assertEqual(measured.get("height-to-width"), reference.get("height_over_width"), type);
            assertEqual(measured.get("wheelbase-in-wheels"), overTyre.get(type), type);
        }
    }

    @Test
    void carsOf1993ComeInAndHaveTheStatisticsThatRFound() throws IOException {
        JsonNode report = bringIn("cars93.csv", CARS93, "c93");

        assertThat(report.get("imported").asInt()).isEqualTo(93);
        assertThat(report.get("rejected").asInt()).isZero();
        JsonNode classes = JSON.readTree(resource("cars93_reference.json")).get("classes");
        for (String type : List.of("Compact", "Large", "Midsize", "Small", "Sporty", "Van")) {
            Map<String, JsonNode> measured = statistics("c93-" + type.toLowerCase(java.util.Locale.ROOT));
            assertEqual(measured.get("wheelbase-share"), classes.get(type).get("wheelbase_over_length"), type);
        }
    }

    /** Lengths in mm are inches times 25.4, to the last digit that R printed. */
    @Test
    void inchesBecomeTheMillimetresThatRFound() throws IOException {
        bringIn("cars93.csv", CARS93, "mm93");
        JsonNode reference = JSON.readTree(resource("cars93_reference.json"))
                .get("classes")
                .get("Van")
                .get("wheelbase_mm");
        List<Double> wheelbases = new java.util.ArrayList<>();
        catalogue.forEach(
                CatalogueFilter.ofSegment("mm93-van"),
                (PackageView view) -> wheelbases.add(
                        view.dimensions().scalar(Dimension.WHEELBASE).orElseThrow()));

        assertThat(wheelbases).hasSize(reference.get("n").asInt());
        assertThat(wheelbases.stream().mapToDouble(d -> d).average().orElseThrow())
                .isCloseTo(reference.get("mean").asDouble(), Percentage.withPercentage(1e-9));
        assertThat(wheelbases.stream().mapToDouble(d -> d).max().orElseThrow())
                .isEqualTo(reference.get("max").asDouble());
    }
}
