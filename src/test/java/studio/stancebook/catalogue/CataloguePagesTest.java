package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.ExpectedVersion;

/** The pages of segments and benchmark packages. */
@StudioTest
class CataloguePagesTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    EntityManagerFactory entities;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("pages");
        segments.create(segment, "Segment <of> pages", "What belongs & what does not");
    }

    private long added(String name, double wheelbase) {
        return catalogue
                .add(Invented.draft(segment, name, wheelbase), new Author(null, "Designer"))
                .id();
    }

    private static Map<String, String> typed(Object... pairs) {
        Map<String, String> fields = new HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put(String.valueOf(pairs[i]), String.valueOf(pairs[i + 1]));
        }
        return fields;
    }

    private static String location(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]+", "");
    }

    @Test
    void recordAPackageTypedInInchesWithLandmarksAndALine() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);

        HttpResponse<String> answer = designer.submit(
                "/packages/new?segment=" + segment,
                "/packages",
                typed(
                        "name", "Invented <coupe>",
                        "segment", segment,
                        "modelYear", "2022",
                        "origin", "measured",
                        "dimensions.wheelbase", "112.2 in",
                        "dimensions.frontTyre", "225/45R17",
                        "dimensions.rearTyre", "225/45R17",
                        "dimensions.cowl.x", "520",
                        "dimensions.cowl.z", "1000",
                        "dimensions.underbody", "-800 400\n600 150\n3500 400",
                        "dimensions.uncertainties.wheelbase", "1"));

        HttpResponse<String> page = designer.get(location(answer));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("Invented &lt;coupe&gt; (2022)")
                .contains("is recorded and counts in its class")
                .contains("2849.88")
                .contains("x 520, z 1000")
                .contains("3 points")
                .contains("Designer of the tests")
                .contains("proportion study")
                .doesNotContain("<coupe>");
    }

    @Test
    void keepWhatWasTypedAndSayWhatIsWrongWithIt() {
        HttpResponse<String> answer = studio.browser(Role.DESIGNER)
                .submit(
                        "/packages/new",
                        "/packages",
                        typed(
                                "name", "Kept name",
                                "segment", segment,
                                "modelYear", "soon",
                                "dimensions.wheelbase", "long",
                                "dimensions.overallHeight", "1499.5",
                                "dimensions.cowl.x", "520"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"Kept name\"")
                .contains("value=\"soon\"")
                .contains("value=\"long\"")
                .contains("value=\"1499.5\"")
                .contains("&quot;soon&quot; is not a year")
                .contains("&quot;long&quot; is not a number")
                .contains("needs both x and z")
                .contains("href=\"#dimensions-wheelbase\"")
                .contains("href=\"#f-modelYear\"");
    }

    @Test
    void refuseByHandWhatDoesNotClose() {
        HttpResponse<String> answer = studio.browser(Role.DESIGNER)
                .submit(
                        "/packages/new",
                        "/packages",
                        typed(
                                "name", "Open",
                                "segment", segment,
                                "dimensions.wheelbase", "2700",
                                "dimensions.overallLength", "4600",
                                "dimensions.frontOverhang", "800",
                                "dimensions.rearOverhang", "900"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("does not close by 200 mm");
    }

    @Test
    void showBothVersionsWhenSomebodyElseSavedFirstAndLoseNeither() {
        long id = added("Wanted by two", 2700);
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        catalogue.change(
                id,
                new ExpectedVersion(0),
                Invented.draft(segment, "Wanted by two", 2750),
                new Author(null, "The other one"));

        HttpResponse<String> conflict = designer.submit(
                "/packages/" + id + "/edit",
                "/packages/" + id,
                typed(
                        "version", "0",
                        "name", "Mine",
                        "segment", segment,
                        "modelYear", "2020",
                        "origin", "specification",
                        "dimensions.wheelbase", "2711",
                        "dimensions.overallHeight", "1500",
                        "dimensions.frontTyreDiameter", "700",
                        "dimensions.rearTyreDiameter", "700"));

        assertThat(conflict.statusCode()).isEqualTo(412);
        assertThat(conflict.body())
                .contains("The other one")
                .contains("2711")
                .contains("2750")
                .contains("Mine")
                .contains("name=\"version\" value=\"1\"");

        HttpResponse<String> answer = designer.submit(
                "/packages/" + id + "/edit",
                "/packages/" + id,
                typed(
                        "version", "1",
                        "name", "Mine",
                        "segment", segment,
                        "modelYear", "2020",
                        "origin", "specification",
                        "dimensions.wheelbase", "2750",
                        "dimensions.overallHeight", "1500",
                        "dimensions.frontTyreDiameter", "700",
                        "dimensions.rearTyreDiameter", "700"));
        assertThat(location(answer)).isEqualTo("/packages/" + id);
        assertThat(catalogue.get(id).name()).isEqualTo("Mine");
        assertThat(catalogue.get(id).dimensions().scalar(Dimension.WHEELBASE)).hasValue(2750);
    }

    @Test
    void offerToRecordAnewWhatSomebodyElseDeletedMeanwhile() {
        long id = added("Deleted meanwhile", 2700);
        StudioBrowser designer = studio.browser(Role.DESIGNER);
        designer.get("/packages/" + id + "/edit");
        catalogue.delete(id, new ExpectedVersion(0));

        HttpResponse<String> answer = designer.submit(
                "/packages/new",
                "/packages/" + id,
                typed("version", "0", "name", "Still here", "segment", segment, "dimensions.wheelbase", "2711"));

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body())
                .contains("value=\"Still here\"")
                .contains("value=\"2711\"")
                .contains("action=\"/packages\"");
    }

    @Test
    void fillTheFormWithWhatIsRecorded() {
        long id = added("To edit", 2700.5);

        String form =
                studio.browser(Role.DESIGNER).get("/packages/" + id + "/edit").body();

        assertThat(form)
                .contains("value=\"To edit\"")
                .contains("value=\"2700.5\"")
                .contains("name=\"version\" value=\"0\"");
    }

    @Test
    void setAsideTakeBackAndAnswerFromThePage() {
        long id = added("Package A", 2700);
        StudioBrowser lead = studio.browser(Role.LEAD);
        String page = "/packages/" + id;

        lead.submit(page, page + "/set-aside", typed("version", 0, "reason", " "));
        assertThat(lead.get(page).body()).contains("Write a reason.");
        lead.submit(page, page + "/set-aside", typed("version", 0, "reason", "Only a mock-up"));
        assertThat(lead.get(page).body()).contains("Only a mock-up").contains("does not count in its class");
        lead.submit(page, page + "/take-back", typed("version", 1));
        lead.submit(page, page + "/values/set-aside", typed("version", 2, "value", "overallHeight", "reason", "Rails"));
        assertThat(lead.get(page).body()).contains("Rails").doesNotContain("does not count in its class");
        assertThat(lead.get("/segments/" + segment).body()).contains("Rails").contains("Overall height");
        lead.submit(page, page + "/values/take-back", typed("version", 3, "value", "overallHeight"));
        assertThat(catalogue.get(id).valuesSetAside()).isEmpty();
        assertThat(catalogue.get(id).setAside()).isNull();
    }

    @Test
    void answerAQueryFromThePage() {
        added("Package A", 2700);
        long id = added("Package A again", 2700);
        StudioBrowser lead = studio.browser(Role.LEAD);
        String page = "/packages/" + id;
        long query = catalogue.get(id).openQueries().get(0).id();

        assertThat(lead.get("/segments/" + segment).body()).contains("Exactly the same dimensions as Package A (2020)");
        lead.submit(page, page + "/queries/" + query + "/settle", typed("answer", " "));
        assertThat(lead.get(page).body()).contains("a query is settled with a note");
        lead.submit(page, page + "/queries/" + query + "/settle", typed("answer", "A sister model"));

        assertThat(lead.get(page).body()).contains("A sister model").contains("Lead of the tests");
        assertThat(catalogue.get(id).openQueries()).isEmpty();
    }

    @Test
    void setAsideWhatAQueryIsAboutWhereItIsSettled() {
        added("Package B", 2700);
        long id = added("Package B again", 2700);
        StudioBrowser lead = studio.browser(Role.LEAD);
        String page = "/packages/" + id;
        long query = catalogue.get(id).openQueries().get(0).id();
        String settle = page + "/queries/" + query + "/settle";

        assertThat(lead.get(page).body()).contains("Set the package aside");
        lead.submit(page, settle, typed("answer", "The same vehicle", "aside", "true", "version", 7));
        assertThat(catalogue.get(id).openQueries()).as("of an older version").hasSize(1);
        lead.submit(page, settle, typed("answer", "The same vehicle", "aside", "true", "version", 0));

        assertThat(catalogue.get(id).setAside()).isNotNull();
        assertThat(catalogue.get(id).openQueries()).isEmpty();
        assertThat(lead.get(page).body()).contains("Set aside: The same vehicle");
    }

    @Test
    void askBeforeDeleting() {
        long id = added("To delete", 2700);
        StudioBrowser lead = studio.browser(Role.LEAD);
        String ask = "/packages/" + id + "/delete";

        assertThat(lead.submit(ask, ask, typed("version", 7)).statusCode()).isEqualTo(412);
        assertThat(location(lead.submit(ask, ask, typed("version", 0)))).isEqualTo("/catalogue");
        assertThat(lead.get("/packages/" + id).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"TUTOR", "LEARNER", "VIEWER"})
    void letEverybodyReadAndOnlyDesignersAndLeadsWrite(Role role) {
        long id = added("Read by all", 2700);
        StudioBrowser reader = studio.browser(role);
        String page = reader.get("/packages/" + id).body();

        assertThat(page).contains("Read by all").doesNotContain("/edit").doesNotContain("/settle");
        assertThat(reader.get("/catalogue").body()).doesNotContain("/packages/new");
        assertThat(reader.get("/segments/" + segment).statusCode()).isEqualTo(200);
        assertThat(reader.get("/packages/" + id + "/edit").statusCode()).isEqualTo(403);
        assertThat(reader.get("/packages/new").statusCode()).isEqualTo(403);
        assertThat(reader.get("/segments/new").statusCode()).isEqualTo(403);
        assertThat(reader.submit("/catalogue", "/packages/" + id + "/set-aside", typed("version", 0, "reason", "No"))
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void listPackagesByFilterAsTableAndAsPictures() {
        added("Invented long", 2870);
        added("Invented short", 2660);
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        String all = "/catalogue?segment=" + segment;

        assertThat(viewer.get(all).body()).contains("Invented long").contains("Invented short");
        String narrowed =
                viewer.get(all + "&measure=wheelbase-in-wheels&min=4,0&max=").body();
        assertThat(narrowed).contains("Invented long").contains("4.10").doesNotContain("Invented short");
        assertThat(viewer.get(all + "&view=pictures").body())
                .contains("side-view-thumbnail")
                .contains("Invented long");
        assertThat(viewer.get(all + "&q=nothing+like+it").body()).contains("No benchmark matches");
        HttpResponse<String> wrong = viewer.get(all + "&fromYear=soon&min=x");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("&quot;soon&quot; is not a year").contains("value=\"soon\"");
    }

    @Test
    void listManyPackagesWithAsManyStatementsAsFew() {
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        String page = "/catalogue?view=pictures&segment=" + segment;
        for (int i = 0; i < 3; i++) {
            added("Package " + i, 2700 + i);
        }
        long forThree = statementsFor(viewer, page);
        for (int i = 3; i < 20; i++) {
            added("Package " + i, 2700 + i);
        }

        assertThat(statementsFor(viewer, page)).isEqualTo(forThree).isPositive();
    }

    /** The fewest of three times: now and then the list of measures is read again as well, whatever is listed. */
    private long statementsFor(StudioBrowser viewer, String page) {
        return IntStream.range(0, 3)
                .mapToLong(time -> statementsOnce(viewer, page))
                .min()
                .orElseThrow();
    }

    private long statementsOnce(StudioBrowser viewer, String page) {
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        viewer.get(page);
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return statements;
    }

    @Test
    void showTheClassByTheQuantilesAskedFor() {
        for (int i = 0; i < 5; i++) {
            added("Package " + i, 2660 + 70 * i);
        }
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        String page = viewer.get("/segments/" + segment).body();
        assertThat(page)
                .contains("Segment &lt;of&gt; pages")
                .contains("What belongs &amp; what does not")
                .contains("5 packages count; class state 5")
                .contains("id=\"wheelbase-in-wheels\"")
                .contains("class=\"spread\"");
        assertThat(viewer.get("/segments/" + segment + "?quantileType=6").body())
                .isNotEqualTo(page);
        assertThat(viewer.get("/segments/" + segment + "?fromYear=2021").body()).contains("No package of this class");
        assertThat(viewer.get("/segments/" + segment + "?fromYear=2021&toYear=2020")
                        .statusCode())
                .isEqualTo(400);
        assertThat(viewer.get("/segments/no-such-segment").statusCode()).isEqualTo(404);
    }

    @Test
    void makeAndDescribeSegments() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        String name = Invented.name("Small Estates");

        String page = location(lead.submit("/segments/new", "/segments", typed("name", name, "description", "")));
        assertThat(page).startsWith("/segments/small-estates");
        assertThat(lead.get("/segments").body()).contains(name);
        assertThat(lead.submit("/segments/new", "/segments", typed("name", name))
                        .statusCode())
                .isEqualTo(409);
        assertThat(lead.submit("/segments/new", "/segments", typed("name", " ")).statusCode())
                .isEqualTo(422);
        location(lead.submit(page + "/edit", page, typed("version", 0, "name", name, "description", "First")));
        HttpResponse<String> conflict =
                lead.submit(page + "/edit", page, typed("version", 0, "name", name, "description", "Second"));
        assertThat(conflict.statusCode()).isEqualTo(412);
        assertThat(conflict.body()).contains("First").contains("Second").contains("name=\"version\" value=\"1\"");
    }

    @Test
    void giveTheSideViewAsAFile() {
        long id = added("To draw", 2700);

        HttpResponse<String> file = studio.browser(Role.VIEWER).get("/packages/" + id + "/drawing.svg");

        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("image/svg+xml"));
        assertThat(file.body()).contains("<svg").contains("To draw");
        studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/packages/{id}/drawing.svg", id)
                .exchange()
                .expectStatus()
                .isOk()
                .expectHeader()
                .contentType("image/svg+xml;charset=UTF-8");
    }

    @Test
    void giveTheSideViewAsAPictureWithTheLayersAskedFor() throws IOException {
        long id = added("To take out", 2700);
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        assertThat(viewer.get("/packages/" + id).body())
                .contains("/packages/" + id + "/drawing.png")
                .contains("value=\"rulers\"");
        String bare = viewer.get("/packages/" + id + "/drawing.svg?layers=vehicle&layers=dimensions")
                .body();
        assertThat(bare).contains("side-view__dimensions").doesNotContain("side-view__ruler", "class=\"count\"");
        byte[] png = studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/packages/{id}/drawing.png?width=640", id)
                .exchange()
                .expectStatus()
                .isOk()
                .expectHeader()
                .contentType("image/png")
                .expectBody()
                .returnResult()
                .getResponseBodyContent();
        assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(640);
        for (String wrong : List.of("width=8000", "layers=wheels")) {
            studio.api(Role.VIEWER)
                    .get()
                    .uri("/api/v1/packages/" + id + "/drawing.png?" + wrong)
                    .exchange()
                    .expectStatus()
                    .isBadRequest()
                    .expectBody()
                    .jsonPath("$.errors[0].field")
                    .isEqualTo(wrong.substring(0, wrong.indexOf('=')));
        }
    }

    @Test
    void adviseOnOffRoadCriteriaWithTheCaution() {
        PackageDraft draft = new PackageDraft(
                "Off-road",
                segment,
                2020,
                Origin.MEASURED,
                Invented.dimensions(2700)
                        .set(Dimension.APPROACH_ANGLE, 30)
                        .set(Dimension.DEPARTURE_ANGLE, 18)
                        .set(Dimension.GROUND_CLEARANCE, 210)
                        .build());

        String page = studio.browser(Role.VIEWER)
                .get("/packages/"
                        + catalogue.add(draft, new Author(null, "Designer")).id())
                .body();

        assertThat(page)
                .contains("49 CFR 523.5(b)(2)")
                .contains("missed by 2°")
                .contains("a licensed test body decide")
                .contains("Not checked here");
    }

    /** Whatever is recorded, and however little, its page can be shown. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void showPackagesOfEveryKind(int kind) {
        var set = Invented.dimensions(2700);
        switch (kind) {
            case 0 -> set.without("overallHeight").without("frontTyreDiameter").without("rearTyreDiameter");
            case 1 -> set.scale(Scale.UNSCALED);
            case 2 -> set.set(Landmark.COWL, 500, 1000).set(Landmark.SCREEN_TOP, 500, 1000);
            default ->
                set.set(Polyline.OUTLINE, List.of(new Point(-800, 300), new Point(500, 1500), new Point(3500, 300)));
        }
        long id = catalogue
                .addAll(
                        List.of(new PackageDraft("Of kind " + kind, segment, null, Origin.DRAWING, set.build())),
                        new Author(null, "Designer"))
                .get(0);

        HttpResponse<String> page = studio.browser(Role.VIEWER).get("/packages/" + id);

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("Of kind " + kind);
        assertThat(studio.browser(Role.VIEWER)
                        .get("/catalogue?view=pictures&segment=" + segment)
                        .statusCode())
                .isEqualTo(200);
    }
}
