package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.exporting.ExportFormat;
import studio.stancebook.exchange.importing.Delivery;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.Importer;
import studio.stancebook.exchange.importing.PackageFile;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import tools.jackson.databind.JsonNode;

/** Files about packages that are there already. */
abstract class ImportUpdatesTest {

    private static final String BY = "a test";

    @TempDir
    Path folder;

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    ClassSnapshots snapshots;

    @Autowired
    Importer importer;

    @Autowired
    JdbcClient database;

    private final String segment = "u" + UUID.randomUUID().toString().substring(0, 8);

    @BeforeEach
    void makeSegment() {
        segments.create(segment, "Segment " + segment, "");
    }

    private long add(String name, double wheelbase) {
        return catalogue
                .add(
                        new PackageDraft(
                                name, segment, 2020, Origin.MEASURED, Invented.least(Origin.MEASURED, wheelbase)),
                        new Author(null, BY))
                .id();
    }

    private Sent send(String table) {
        return Sent.by(studio.api(Role.DESIGNER), table.replace("$S", segment)).with("update", true);
    }

    private List<PackageView> all() {
        List<PackageView> all = new ArrayList<>();
        catalogue.forEach(CatalogueFilter.ofSegment(segment), all::add);
        return all;
    }

    private byte[] export(ExportFormat format) {
        return studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/packages/export?format={format}&segment={segment}", format.key(), segment)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody();
    }

    @ParameterizedTest
    @EnumSource(ExportFormat.class)
    void findsNothingChangedInAnExport(ExportFormat format) {
        List<Long> ids = catalogue.addAll(
                List.of(
                        new PackageDraft("=1+1", segment, 1990, Origin.MEASURED, Invented.everything(Origin.MEASURED)),
                        new PackageDraft("-", segment, 2001, Origin.DERIVED, Invented.sketch(Origin.DERIVED)),
                        new PackageDraft(
                                "'", segment, null, Origin.MEASURED, Invented.least(Origin.MEASURED, 0.1 + 2999.2))),
                new Author(null, BY));
        catalogue.setAside(ids.get(1), "+not ours; no", new Author(null, BY));
        catalogue.setValueAside(ids.get(0), "cowl", "=measured badly", new Author(null, BY));
        List<PackageView> before = all();

        JsonNode report = Sent.by(studio.api(Role.LEAD), export(format))
                .with("update", true)
                .expect(200);

        assertThat(report.get("rows").asInt()).isEqualTo(3);
        assertThat(report.get("unchanged").asInt()).isEqualTo(3);
        for (String none : List.of("accepted", "rejected", "updated", "imported", "queries")) {
            assertThat(report.get(none).asInt()).as(none).isZero();
        }
        assertThat(all()).isEqualTo(before);
    }

    @Test
    void changesWhatDiffersAndKeepsWhatTheFileLeavesBlank() {
        long id = add("a", 2500);
        add("b", 2600);

        JsonNode report =
                send("name,segment,year,wheelbase,height,width\na,$S,2020,2510,1400,\nb,$S,2020,2600,,\nc,$S,2020,2700,,\n")
                        .expect(200);

        assertThat(report.get("accepted").asInt()).isEqualTo(2);
        assertThat(report.get("updated").asInt()).isEqualTo(1);
        assertThat(report.get("unchanged").asInt()).isEqualTo(1);
        assertThat(report.get("imported").asInt()).isEqualTo(2);
        JsonNode change = report.get("changes").get(0);
        assertThat(change.get("row").asLong()).isEqualTo(2);
        assertThat(change.get("package").asLong()).isEqualTo(id);
        assertThat(change.get("name").asString()).isEqualTo("a (2020)");
        assertThat(change.get("values").toString())
                .contains("{\"key\":\"wheelbase\",\"before\":\"2500\",\"after\":\"2510\"}")
                .contains("{\"key\":\"overallHeight\",\"before\":\"\",\"after\":\"1400\"}");
        PackageView changed = catalogue.get(id);
        assertThat(changed.dimensions().scalar(Dimension.WHEELBASE)).hasValue(2510);
        assertThat(changed.dimensions().scalar(Dimension.OVERALL_HEIGHT)).hasValue(1400);
        assertThat(changed.origin()).as("named by no column").isEqualTo(Origin.MEASURED);
        assertThat(changed.dimensions().originOf("wheelbase"))
                .as("of this file")
                .isEqualTo(Origin.SPECIFICATION);
        assertThat(all()).extracting(PackageView::name).containsExactly("a", "b", "c");
    }

    @Test
    void takesTheSameFileForUnchangedTheSecondTime() {
        add("a", 2500);
        String table = "name,segment,year,wheelbase,height\na,$S,2020,2510,1400\n";
        send(table).expect(200);

        JsonNode again = send(table).expect(200);

        assertThat(again.get("unchanged").asInt()).isEqualTo(1);
        assertThat(again.get("accepted").asInt()).isZero();
    }

    @Test
    void writesNothingInADryRunOrBesideARefusedRow() {
        long id = add("a", 2500);
        String table = "name,segment,year,wheelbase\na,$S,2020,2510\n";

        JsonNode dry = send(table).with("dryRun", true).expect(200);
        JsonNode refused = send(table + "b,$S,2020,\n").expect(422);

        assertThat(dry.get("updated").asInt()).isEqualTo(1);
        assertThat(dry.get("changes")).hasSize(1);
        assertThat(refused.get("updated").asInt()).isZero();
        assertThat(catalogue.get(id).dimensions().scalar(Dimension.WHEELBASE)).hasValue(2500);
        assertThat(catalogue.get(id).version()).isZero();
    }

    @Test
    void refusesAPackageThatIsThereUnlessUpdatesAreWished() {
        add("a", 2500);

        JsonNode refused = Sent.by(
                        studio.api(Role.DESIGNER), "name,segment,year,wheelbase\na," + segment + ",2020,2500\n")
                .expect(422);

        assertThat(refused.toString()).contains("update those that exist");
    }

    @Test
    void leavesWhatItWasInTheActivityRecord() {
        long id = add("a", 2500);
        send("name,segment,year,wheelbase\na,$S,2020,2510\n").expect(200);

        String line = database.sql("SELECT action, changes FROM activity_line WHERE kind = 'package' AND subject = ?"
                        + " ORDER BY number DESC")
                .param(String.valueOf(id))
                .query((row, n) -> row.getString(1) + " " + row.getString(2))
                .list()
                .get(0);

        assertThat(line).startsWith("changed").contains("2500").contains("2510");
    }

    @Test
    void showsTheChangeInTheClassAndAsksAboutIt() {
        List<Long> ids = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            ids.add(add("car " + i, 2500 + 10 * i));
        }
        snapshots.of(segment);

        JsonNode report = send("name,segment,year,wheelbase\ncar 3,$S,2020,4100\nnew,$S,2020,2555\n")
                .expect(200);

        assertThat(report.get("problems").toString()).contains("4100").contains("far from the rest of its class");
        assertThat(catalogue.get(ids.get(3)).openQueries()).isNotEmpty();
        assertThat(snapshots.of(segment).packages()).isEqualTo(13);
        send("name,segment,year,wheelbase\ncar 3,$S,2020,2530\n").expect(200);
        assertThat(catalogue.get(ids.get(3)).openQueries()).as("no longer far").isEmpty();
    }

    @Test
    void setsAsideWhatTheFileSaysAndNothingTwice() {
        long id = add("a", 2500);
        String table = "name,segment,year,wheelbase,setAside,valuesSetAside\n"
                + "a,$S,2020,2500,not ours,wheelbase: guessed\n";

        JsonNode first = send(table).expect(200);
        JsonNode second = send(table).expect(200);

        assertThat(first.get("updated").asInt()).isEqualTo(1);
        assertThat(second.get("unchanged").asInt()).isEqualTo(1);
        PackageView view = catalogue.get(id);
        assertThat(view.setAside()).isNotNull();
        assertThat(view.valuesSetAside()).containsOnlyKeys("wheelbase");
        assertThat(snapshots.of(segment).packages()).isZero();
    }

    @Test
    void writesOnlyTheChangesThatSomebodySaw() throws Exception {
        long id = add("a", 2500);
        ImportOptions update = new ImportOptions(true, false, false, Origin.SPECIFICATION, true, Map.of(), null);
        Path file = folder.resolve("cars.csv");
        Files.writeString(file, "name,segment,year,wheelbase\na," + segment + ",2020,2510\n");
        Delivery delivery = new Delivery(PackageFile.of(file, null, null), "cars.csv", new Author(null, BY));
        ImportReport seen = importer.run(delivery, update, share -> {});
        PackageView now = catalogue.get(id);
        catalogue.change(
                id,
                new ExpectedVersion(now.version()),
                new PackageDraft("a", segment, 2020, Origin.MEASURED, Invented.least(Origin.MEASURED, 2505)),
                new Author(null, "Somebody else"));

        assertThatThrownBy(() -> importer.run(delivery, update.writing(seen.state()), share -> {}))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("Check it again");
        assertThat(catalogue.get(id).dimensions().scalar(Dimension.WHEELBASE)).hasValue(2505);

        ImportReport again = importer.run(delivery, update, share -> {});
        assertThat(importer.run(delivery, update.writing(again.state()), share -> {})
                        .imported())
                .isEqualTo(1);
    }
}
