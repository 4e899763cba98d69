package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.importing.Delivery;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.Importer;
import studio.stancebook.exchange.importing.PackageFile;
import tools.jackson.databind.JsonNode;

/** Bringing files in by the call. */
abstract class ImportCallsTest {

    private static final String HEADING = "name,segment,wheelbase [mm],overallLength [mm],overallHeight [mm]\n";

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    Importer importer;

    private final String segment = "s" + UUID.randomUUID().toString().substring(0, 8);

    private Sent sent(String text) {
        return Sent.by(studio.api(Role.LEAD), text.replace("$S", segment));
    }

    private Sent intoSegment(String text) {
        segments.create(segment, segment, "");
        return sent(text);
    }

    private List<PackageSummary> packages() {
        return catalogue
                .search(CatalogueFilter.ofSegment(segment), PageRequest.of(0, 200))
                .getContent();
    }

    private List<PackageView> views() {
        return catalogue.getAll(packages().stream().map(PackageSummary::id).toList());
    }

    private static List<String> problems(JsonNode report) {
        return StreamSupport.stream(report.get("problems").spliterator(), false)
                .map(problem -> problem.get("severity").asString() + " "
                        + problem.get("row").asInt() + " "
                        + problem.get("column").asString() + "="
                        + problem.get("value").asString())
                .toList();
    }

    private static String counts(JsonNode report) {
        return report.get("rows").asInt() + " " + report.get("accepted").asInt() + " "
                + report.get("rejected").asInt() + " " + report.get("queries").asInt() + " "
                + report.get("imported").asInt();
    }

    @Test
    void takesOtherWordsForASegmentThatIsThere() {
        segments.create(segment, "Segment " + segment, "");
        String table = "name,segment,wheelbase\na,Pick-up,2500\nb,\"Van, small\",2600\n";
        String words = "{\"pick-up\":\"" + segment + "\",\"Van, small\":\"" + segment + "\"}";

        JsonNode unknown =
                Sent.by(studio.api(Role.DESIGNER), table).with("dryRun", true).expect(200);
        JsonNode pointed =
                Sent.by(studio.api(Role.DESIGNER), table).pointed(words).expect(200);

        assertThat(unknown.get("rejected").asInt()).isEqualTo(2);
        assertThat(unknown.get("missingSegments").toString()).isEqualTo("[\"Pick-up\",\"Van, small\"]");
        assertThat(pointed.get("imported").asInt()).isEqualTo(2);
        assertThat(pointed.get("missingSegments")).isEmpty();
        assertThat(catalogue.exists(new PackageName("b", segment, null))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "{\"a\":", "{\"a\":null}", "{\"a\":{}}", "{\"a\":\"no-such-segment\"}"})
    void refusesWordsForNoSegment(String words) {
        JsonNode refused = Sent.by(studio.api(Role.DESIGNER), "name,segment,wheelbase\na,a,2500\n")
                .pointed(words)
                .expect(words.contains("no-such") ? 422 : 400);

        assertThat(refused.get("errors").get(0).get("field").asString()).isEqualTo("segments");
    }

    @Test
    void bringsInATableWhoseHeadingsAreKnown() {
        JsonNode report =
                intoSegment(HEADING + "a,$S,2500,4000,1400\nb,$S,2600,4100,\n").expect(200);

        assertThat(counts(report)).isEqualTo("2 2 0 0 2");
        assertThat(views()).extracting(PackageView::name).containsExactlyInAnyOrder("a", "b");
        assertThat(views().stream()
                        .filter(view -> view.name().equals("a"))
                        .findFirst()
                        .orElseThrow()
                        .dimensions()
                        .scalars())
                .containsEntry(Dimension.WHEELBASE, 2500.0)
                .containsEntry(Dimension.OVERALL_HEIGHT, 1400.0);
    }

    @Test
    void writesNothingInADryRun() {
        JsonNode report = intoSegment(HEADING + "a,$S,2500,4000,1400\n")
                .with("dryRun", true)
                .expect(200);

        assertThat(counts(report)).isEqualTo("1 1 0 0 0");
        assertThat(packages()).isEmpty();
    }

    @Test
    void writesNothingWhenOneRowIsRefusedAndNamesAllRefusedRows() {
        JsonNode report = intoSegment(HEADING + "a,$S,2500,4000,1400\n,$S,2500,4000,1400\nc,$S,2500,tall,1400\n")
                .expect(422);

        assertThat(report.get("status").asInt()).isEqualTo(422);
        assertThat(report.get("detail").asString()).contains("2 of 3 rows");
        assertThat(counts(report)).isEqualTo("3 0 2 0 0");
        assertThat(problems(report)).containsExactly("error 3 name=", "error 4 overallLength [mm]=tall");
        assertThat(report.get("errors").get(1).get("field").asString()).isEqualTo("row 4, overallLength [mm]");
        assertThat(packages()).isEmpty();
    }

    @Test
    void keepsTheGoodRowsWhenWishedAndAsksAboutWhatItLeftOut() {
        JsonNode report = intoSegment(HEADING + "a,$S,2500,4000,14000\n,$S,2500,4000,1400\nc,$S,9,4000,1400\n")
                .with("partial", true)
                .expect(200);

        assertThat(counts(report)).isEqualTo("3 1 2 1 1");
        assertThat(problems(report))
                .containsExactly("query 2 overallHeight [mm]=14000", "error 3 name=", "error 4 wheelbase [mm]=9");
        PackageView view = views().get(0);
        assertThat(view.dimensions().scalars()).doesNotContainKey(Dimension.OVERALL_HEIGHT);
        assertThat(view.openQueries())
                .extracting(query -> query.question())
                .singleElement()
                .asString()
                .contains("14000")
                .contains("800 to 4000")
                .contains("Left out");
    }

    @Test
    void refusesNamesThatAreInTheFileOrTheCatalogueAlready() {
        String heading = "name,segment,year,wheelbase\n";
        intoSegment(heading + "a,$S,1990,2500\n").expect(200);

        JsonNode report = sent(heading + "a,$S,1990,2600\nb,$S,,2601\na,$S,1991,2602\nb,$S,,2603\n")
                .with("partial", true)
                .expect(200);

        assertThat(problems(report)).containsExactly("error 2 name=a", "error 5 name=b");
        assertThat(report.get("problems").get(1).get("message").asString()).contains("Row 3");
        assertThat(packages()).hasSize(3);
    }

    @Test
    void onlyAsksAboutEqualDimensionsAndValuesThatDoNotClose() {
        JsonNode report = intoSegment("name,segment,wheelbase,overallLength,frontOverhang,rearOverhang\n"
                        + "a,$S,2500,4000,700,700\nb,$S,2500,4000,700,700\n")
                .expect(200);

        assertThat(counts(report)).isEqualTo("2 2 0 4 2");
        assertThat(problems(report))
                .containsExactly(
                        "query 2 overallLength, frontOverhang, wheelbase, rearOverhang=",
                        "query 2 =",
                        "query 3 overallLength, frontOverhang, wheelbase, rearOverhang=",
                        "query 3 =");
        assertThat(views())
                .allSatisfy(view -> assertThat(view.openQueries())
                        .extracting(query -> query.cause().name())
                        .contains("DOES_NOT_CLOSE"));

        JsonNode again = sent("name,segment,wheelbase,overallLength,frontOverhang,rearOverhang\n"
                        + "c,$S,2500,4000,700,700\nd,$S,2501,4000,700,700\n")
                .with("dryRun", true)
                .expect(200);
        assertThat(problems(again))
                .containsExactly(
                        "query 2 overallLength, frontOverhang, wheelbase, rearOverhang=",
                        "query 2 =",
                        "query 3 overallLength, frontOverhang, wheelbase, rearOverhang=");
        assertThat(again.get("problems").get(1).get("message").asString()).containsPattern("same dimensions as [ab]");
    }

    @Test
    void makesSegmentsOnlyWhenWished() {
        JsonNode refused = sent(HEADING + "a,New $S,2500,4000,1400\n").expect(422);
        assertThat(refused.get("problems").get(0).get("message").asString()).contains("no such segment");

        JsonNode dry = sent(HEADING + "a,New $S,2500,4000,1400\n")
                .with("createSegments", true)
                .with("dryRun", true)
                .expect(200);
        assertThat(dry.get("newSegments").get(0).asString()).isEqualTo("New " + segment);
        assertThat(segments.exists("new-" + segment)).isFalse();

        sent(HEADING + "a,New $S,2500,4000,1400\nb,new-$S,2500,4000,1500\n")
                .with("createSegments", true)
                .expect(200);
        assertThat(segments.get("new-" + segment).name()).isEqualTo("New " + segment);
        assertThat(segments.get("new-" + segment).packages()).isEqualTo(2);

        sent(HEADING + "c,NEW $S,2500,4000,1600\n").expect(200);
        assertThat(segments.get("new-" + segment).packages()).isEqualTo(3);
    }

    @Test
    void makesNoSegmentWhenARowIsRefused() {
        sent(HEADING + "a,$S,2500,4000,1400\n,$S,1,1,1\n")
                .with("createSegments", true)
                .expect(422);

        assertThat(segments.exists(segment)).isFalse();
    }

    @Test
    void refusesTheWrongColumnForSegments() {
        StringBuilder rows = new StringBuilder(HEADING);
        for (int i = 0; i < 250; i++) {
            rows.append("n")
                    .append(i)
                    .append(",")
                    .append(segment)
                    .append("-")
                    .append(i)
                    .append(",")
                    .append(2500 + i)
                    .append(",4000,\n");
        }

        JsonNode report = sent(rows.toString())
                .with("createSegments", true)
                .with("dryRun", true)
                .expect(200);

        assertThat(report.get("rejected").asInt()).isEqualTo(50);
        assertThat(report.get("problems").get(0).get("message").asString()).contains("200 new segments");
    }

    @Test
    void listsOnlySoManyProblemsAndCountsTheRest() {
        JsonNode report = intoSegment(HEADING + ",$S,2500,,\n".repeat(700))
                .with("dryRun", true)
                .expect(200);

        assertThat(report.get("problems").size()).isEqualTo(500);
        assertThat(report.get("problemsNotListed").asInt()).isEqualTo(200);
        assertThat(report.get("rejected").asInt()).isEqualTo(700);
    }

    @Test
    void bringsInJsonOfTheShapeOfThePackages() {
        JsonNode report = intoSegment("{\"items\":[{\"id\":7,\"name\":\"j\",\"segment\":\"$S\",\"modelYear\":1999,"
                        + "\"origin\":\"measured\",\"dimensions\":{\"wheelbase\":2500,\"cowl\":[500,900],"
                        + "\"wing\":1}},{\"name\":\"k\",\"segment\":\"$S\"}, 7]}")
                .named("cars.json")
                .with("partial", true)
                .expect(200);

        assertThat(counts(report)).isEqualTo("3 1 2 1 1");
        assertThat(problems(report))
                .containsExactly("query 1 dimensions.wing=", "error 2 dimensions.wheelbase=", "error 3 =");
        assertThat(views().get(0).dimensions().landmarks()).hasSize(1);
    }

    @Test
    void refusesWhatIsNoTable() {
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0};

        assertThat(Sent.by(studio.api(Role.LEAD), picture)
                        .expect(415)
                        .get("detail")
                        .asString())
                .contains("PNG");
        assertThat(sent("").expect(400).get("detail").asString()).contains("empty");
        assertThat(sent("name,segment,wheelbase\na,\u0000,1\n")
                        .expect(400)
                        .get("detail")
                        .asString())
                .contains("NUL");
        assertThat(sent("a,".repeat(100_000)).expect(413).get("detail").asString())
                .contains("500 columns");
        assertThat(sent("{\"packages\":[{]}").expect(400).get("detail").asString())
                .contains("line 1");
        assertThat(sent("{\"a\":1}").expect(400).get("detail").asString()).contains("packages");
        assertThat(sent("[{\"a\":" + "[".repeat(50)).expect(400).get("status").asInt())
                .isEqualTo(400);
        assertThat(Sent.by(studio.api(Role.LEAD), "x".repeat(40 << 20).getBytes(StandardCharsets.US_ASCII))
                        .expect(413)
                        .get("detail")
                        .asString())
                .contains("32 MB");
    }

    @Test
    void refusesAMappingThatDoesNotFit() {
        assertThat(sent("a,b\n1,2\n")
                        .expect(422)
                        .get("errors")
                        .get(0)
                        .get("field")
                        .asString())
                .isEqualTo("mapping");
        assertThat(sent("a,b\n1,2\n")
                        .mapped("[]")
                        .expect(400)
                        .get("errors")
                        .get(0)
                        .get("field")
                        .asString())
                .isEqualTo("mapping");
        assertThat(sent("a,b\n1,2\n")
                        .mapped("{\"c\":{\"field\":\"name\"}}")
                        .expect(422)
                        .get("errors")
                        .get(0)
                        .get("field")
                        .asString())
                .isEqualTo("mapping.c");
        assertThat(sent(HEADING)
                        .with("origin", "hearsay")
                        .expect(400)
                        .get("detail")
                        .asString())
                .contains("specification");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"TUTOR", "LEARNER", "VIEWER"})
    void isForLeadAndDesignersOnly(Role role) {
        segments.create(segment, segment, "");

        Sent.by(studio.api(role), HEADING + "a," + segment + ",2500,4000,1400\n")
                .expect(403);

        assertThat(packages()).isEmpty();
    }

    @Test
    void letsADesignerBringInButMakeNoSegment() {
        segments.create(segment, segment, "");
        String file = HEADING + "a," + segment + ",2500,4000,1400\n";

        Sent.by(studio.api(Role.DESIGNER), file).with("createSegments", true).expect(403);
        Sent.by(studio.api(Role.DESIGNER), file).expect(200);

        assertThat(packages()).hasSize(1);
        assertThat(views().get(0).createdBy())
                .isEqualTo(studio.person(Role.DESIGNER).name());
    }

    @Test
    void asksWhoEverSendsAFile() {
        Sent.by(studio.anonymous(), HEADING).expect(401);
    }

    private static Delivery delivery(Path file) throws IOException {
        return new Delivery(PackageFile.of(file, null, null), "cars.csv", new Author(null, "a test"));
    }

    /** Modified z-score above 3.5, Iglewicz and Hoaglin: with a median of 2810 and a MAD of 10, 5000 is far. */
    @Test
    void countsAndListsValuesFarFromTheirClassInADryRunAsWell() {
        segments.create(segment, segment, "");
        StringBuilder rows = new StringBuilder("name,segment,wheelbase\n");
        for (int i = 0; i < 20; i++) {
            rows.append('n').append(i).append(",$S,").append(2790 + 2 * i).append('\n');
        }
        rows.append("far,$S,5000\n");

        JsonNode dry = sent(rows.toString()).with("dryRun", true).expect(200);
        JsonNode report = sent(rows.toString()).expect(200);

        assertThat(dry.get("queries").asInt()).isEqualTo(1);
        assertThat(dry.get("problems")).isEqualTo(report.get("problems"));
        assertThat(report.get("queries").asInt()).isEqualTo(1);
        JsonNode query = report.get("problems").get(0);
        assertThat(query.get("row").asInt()).isEqualTo(22);
        assertThat(query.get("column").asString()).isEqualTo("wheelbase");
        assertThat(query.get("message").asString()).contains("far from the rest of its class");
    }

    private static String manyRows() {
        StringBuilder rows = new StringBuilder(HEADING);
        for (int i = 0; i < 1200; i++) {
            rows.append('n').append(i).append(",$S,").append(2000 + i).append(",4000,\n");
        }
        return rows.toString();
    }

    @Test
    void neverHalfSavesWhenSomethingFailsInTheMiddle(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("cars.csv"), manyRows().replace("$S", segment));
        ImportOptions options = new ImportOptions(false, false, true, Origin.SPECIFICATION);
        List<Integer> seen = new ArrayList<>();

        assertThatThrownBy(() -> importer.run(delivery(file), options, share -> {
                    seen.add(packages().size());
                    if (share > 0.7) {
                        throw new IllegalStateException("the power is cut");
                    }
                }))
                .hasMessage("the power is cut");

        assertThat(seen).as("packages were being written").endsWith(200);
        assertThat(segments.exists(segment)).isFalse();
        assertThat(catalogue.search(CatalogueFilter.all(), PageRequest.of(0, 1)).getContent())
                .noneMatch(found -> found.segment().equals(segment));
        assertThat(importer.run(delivery(file), options, share -> {}).imported())
                .isEqualTo(1200);
    }

    @Test
    void letsOneOfTwoWhoBringInTheSameFileHaveIt() throws Exception {
        segments.create(segment, segment, "");
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            Callable<Integer> importing = () -> {
                try {
                    return sent(manyRows()).expect(200).get("imported").asInt();
                } catch (AssertionError refused) {
                    return 0;
                }
            };
            List<Integer> imported = new ArrayList<>();
            for (Future<Integer> future : two.invokeAll(List.of(importing, importing))) {
                imported.add(future.get());
            }
            assertThat(imported).containsExactlyInAnyOrder(0, 1200);
            assertThat(segments.get(segment).packages()).isEqualTo(1200);
        } finally {
            two.shutdown();
        }
    }
}
