package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.exporting.ExportFormat;
import studio.stancebook.problem.ExpectedVersion;
import tools.jackson.databind.JsonNode;

/** What is taken out comes in again without change. */
abstract class RoundTripTest {

    private static final Author BY = new Author(null, "a test");

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    private final String segment = "r" + UUID.randomUUID().toString().substring(0, 8);

    private void fill() {
        segments.create(segment, "Röund & \"trip\", " + segment, "");
        List<Long> ids = catalogue.addAll(
                List.of(
                        draft("=1+1", 1990, Origin.MEASURED, List.of("Is this =right?", "- and this?")),
                        draft("'68 \"Coupé\", long;\tsemicolon", null, Origin.DRAWING, List.of()),
                        new PackageDraft("-", segment, 2001, Origin.DERIVED, Invented.sketch(Origin.DERIVED)),
                        new PackageDraft("NA", segment, null, Origin.DRAWING, Invented.least(Origin.DRAWING, 2500)),
                        new PackageDraft(
                                "2500", segment, null, Origin.SPECIFICATION, Invented.least(Origin.SPECIFICATION, 1e3)),
                        new PackageDraft(
                                "'=quoted", segment, null, Origin.MEASURED, Invented.least(Origin.MEASURED, 5999.9999)),
                        new PackageDraft(
                                "'''", segment, null, Origin.MEASURED, Invented.least(Origin.MEASURED, 0.1 + 2999.2))),
                BY);
        catalogue.setAside(ids.get(1), "+not ours; \"really\": no", BY);
        catalogue.setValueAside(ids.get(0), "wheelbase-share", "odd: see note", BY);
        catalogue.setValueAside(ids.get(0), "cowl", "=measured badly", BY);
    }

    private PackageDraft draft(String name, Integer year, Origin origin, List<String> queries) {
        return new PackageDraft(name.replace("\t", " "), segment, year, origin, Invented.everything(origin), queries);
    }

    private List<PackageView> all() {
        List<PackageView> all = new ArrayList<>();
        catalogue.forEach(CatalogueFilter.ofSegment(segment), all::add);
        return all;
    }

    /** Everything that has to survive, as one text a package. */
    private List<String> content() {
        return all().stream()
                .map(view -> String.join(
                        " | ",
                        view.name(),
                        view.segment(),
                        view.segmentName(),
                        String.valueOf(view.modelYear()),
                        view.origin().key(),
                        view.dimensions().origin().key(),
                        DimensionJson.write(view.dimensions()).toString(),
                        view.setAside() == null ? "" : view.setAside().reason(),
                        new java.util.TreeMap<>(view.valuesSetAside())
                                .entrySet().stream()
                                        .map(entry -> entry.getKey() + "="
                                                + entry.getValue().reason())
                                        .toList()
                                        .toString(),
                        view.openQueries().stream()
                                .map(query -> query.cause() + " " + query.question())
                                .sorted()
                                .toList()
                                .toString()))
                .toList();
    }

    private byte[] takeOut(String format) {
        return studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/packages/export?format={format}&segment={segment}", format, segment)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody();
    }

    @ParameterizedTest
    @EnumSource(ExportFormat.class)
    void changesNothing(ExportFormat format) {
        fill();
        List<String> before = content();

        byte[] file = takeOut(format.key());
        all().forEach(view -> catalogue.delete(view.id(), new ExpectedVersion(view.version())));
        JsonNode report = Sent.by(studio.api(Role.LEAD), file).expect(200);

        assertThat(report.get("imported").asInt()).isEqualTo(7);
        assertThat(content()).containsExactlyElementsOf(before);
        assertThat(takeOut("json")).as("taken out again").isEqualTo(takeOut("json"));
    }

    @ParameterizedTest
    @EnumSource(ExportFormat.class)
    void refusesEveryPackageThatIsThereAlready(ExportFormat format) {
        fill();

        JsonNode report = Sent.by(studio.api(Role.LEAD), takeOut(format.key())).expect(422);

        assertThat(report.get("rejected").asInt()).isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource({"csv,text/csv", "xlsx,application/vnd.openxmlformats", "json,application/json"})
    void namesTheFileAfterTheDay(String format, String type) {
        segments.create(segment, segment, "");
        HttpHeaders headers = studio.api(Role.LEARNER)
                .get()
                .uri("/api/v1/packages/export?format={format}&segment={segment}", format, segment)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody(byte[].class)
                .returnResult()
                .getResponseHeaders();

        assertThat(headers.getFirst(HttpHeaders.CONTENT_DISPOSITION))
                .matches("attachment; filename=\"packages-\\d{4}-\\d\\d-\\d\\d\\." + format + "\"");
        assertThat(headers.getFirst(HttpHeaders.CONTENT_TYPE)).startsWith(type);
        assertThat(headers.getContentLength()).isPositive();
    }

    @Test
    void writesAnEmptyClassAsAHeadingAlone() {
        segments.create(segment, segment, "");

        assertThat(new String(takeOut("csv"), StandardCharsets.UTF_8))
                .isEqualTo("name,segment,segmentName,origin,wheelbase [mm]\r\n");
        assertThat(new String(takeOut("json"), StandardCharsets.UTF_8)).isEqualTo("{\"packages\":[\n]}");
    }

    @Test
    void takesOutOnlyWhatIsAskedFor() {
        fill();

        String csv = new String(
                studio.api(Role.VIEWER)
                        .get()
                        .uri("/api/v1/packages/export?segment={s}&origin=measured&fromYear=1980", segment)
                        .exchange()
                        .expectStatus()
                        .isOk()
                        .expectBody(byte[].class)
                        .returnResult()
                        .getResponseBody(),
                StandardCharsets.UTF_8);

        assertThat(csv.lines().filter(line -> line.contains("," + segment + ",")))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("'=1+1,");
    }

    @Test
    void refusesOtherFormatsAndStrangers() {
        studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/packages/export?format=pdf")
                .exchange()
                .expectStatus()
                .isBadRequest();
        studio.anonymous()
                .get()
                .uri("/api/v1/packages/export")
                .exchange()
                .expectStatus()
                .isUnauthorized();
    }
}
