package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Origin;

/** Bringing a file in by pages, without script. */
@StudioTest
class BringInPagesTest {

    private static final Pattern SELECT =
            Pattern.compile("<select class=\"field__input\" name=\"(target|unit)\".*?</select>", Pattern.DOTALL);
    private static final Pattern SELECTED = Pattern.compile("value=\"([^\"]*)\"\\s+selected");

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    private final String segment = "p" + UUID.randomUUID().toString().substring(0, 8);

    private StudioBrowser browser(Role role) {
        SignedIn person = studio.add(UUID.randomUUID() + "@studio.example", "Somebody", role);
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    private String send(StudioBrowser browser, String text) {
        HttpResponse<String> answer = browser.upload(
                "/bring-in",
                "/bring-in",
                "cars.csv",
                text.replace("$S", segment).getBytes(StandardCharsets.UTF_8));
        assertThat(answer.statusCode()).isEqualTo(302);
        return location(answer);
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("^https?://[^/]+", "");
    }

    /** The choices that the page shows, and one more field. */
    private static Map<String, String> asShown(String page, String field, String value) {
        StringBuilder targets = new StringBuilder();
        StringBuilder units = new StringBuilder();
        Matcher selects = SELECT.matcher(page);
        while (selects.find()) {
            Matcher selected = SELECTED.matcher(selects.group());
            String chosen = selected.find() ? selected.group(1) : "";
            (selects.group(1).equals("target") ? targets : units).append(chosen).append(',');
        }
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("target", targets.toString());
        fields.put("unit", units.toString());
        fields.put("origin", "measured");
        fields.put(field, value);
        return fields;
    }

    /** Looks again until the page is another one; the time limit of the test ends it if it never is. */
    private static String await(StudioBrowser browser, String path, Predicate<String> done) {
        String page = browser.get(path).body();
        while (!done.test(page)) {
            page = browser.get(path).body();
        }
        return page;
    }

    private static String report(StudioBrowser browser, HttpResponse<String> started) {
        assertThat(started.statusCode()).isEqualTo(302);
        return await(browser, location(started), page -> !page.contains("id=\"run-share\""));
    }

    private int packages() {
        return (int) catalogue
                .search(CatalogueFilter.ofSegment(segment), PageRequest.of(0, 1))
                .getTotalElements();
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void goesFromTheFileThroughColumnsAndCheckIntoTheCatalogue() {
        StudioBrowser browser = browser(Role.LEAD);
        String upload = send(browser, "Name,Class,Wheelbase (in),Tire,Rim,Colour\na,$S,102,195/60,R14,red\n");

        String mapping = browser.get(upload).body();
        assertThat(mapping)
                .contains("cars.csv")
                .contains("What the column Wheelbase (in) holds")
                .contains("195/60");
        Map<String, String> shown = asShown(mapping, "createSegments", "true");
        assertThat(shown)
                .containsEntry(
                        "target",
                        "field:name,field:segment,dimension:wheelbase,dimension:tyre:size,dimension:tyre:rim,,")
                .containsEntry("unit", ",,in,,,,");

        String checked = report(browser, browser.submit(upload, upload + "/check", shown));
        assertThat(checked).contains("The one row can be imported").contains("New segments: " + segment);
        assertThat(segments.exists(segment)).isFalse();

        String written = report(browser, browser.submit(upload + "/report", upload + "/write", Map.of()));
        assertThat(written).contains("One package is in the catalogue");
        assertThat(packages()).isEqualTo(1);
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void showsRefusedRowsAndOffersToKeepTheGoodOnes() {
        segments.create(segment, segment, "");
        StudioBrowser browser = browser(Role.DESIGNER);
        String upload = send(browser, "name,segment,wheelbase,height\na,$S,2500,1400\nb,,2500,1400\nc,$S,2600,tall\n");

        String checked = report(
                browser,
                browser.submit(
                        upload, upload + "/check", asShown(browser.get(upload).body(), "x", "")));
        assertThat(checked)
                .contains("while 2 rows are refused")
                .contains("The row has no segment.")
                .contains("Refused")
                .doesNotContain("Import one package");

        HttpResponse<String> part = browser.get(upload + "/progress");
        assertThat(part.body()).contains("id=\"run-share\"").doesNotContain("<html");
        assertThat(part.headers().firstValue("HX-Refresh")).contains("true");

        String again = report(browser, browser.submit(upload + "/report", upload + "/check-partial", Map.of()));
        assertThat(again).contains("2 of the rows can be imported, 1 cannot").contains("Query");
        report(browser, browser.submit(upload + "/report", upload + "/write", Map.of()));
        assertThat(packages()).isEqualTo(2);
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void givesTheRefusedRowsToMendAndTakesThemMended() {
        segments.create(segment, segment, "");
        StudioBrowser browser = browser(Role.DESIGNER);
        String upload = send(browser, "name,segment,wheelbase\n=Gull,$S,long\nTern,$S,2600\n");
        String checked = report(
                browser,
                browser.submit(
                        upload, upload + "/check", asShown(browser.get(upload).body(), "partial", "true")));
        assertThat(checked).contains("The refused row as a table").contains(">=Gull<");

        HttpResponse<String> refused = browser.get(upload + "/refused.csv");
        assertThat(refused.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"cars-refused.csv\"");
        assertThat(refused.body())
                .startsWith("Refused because,name,segment,wheelbase\r\n\"wheelbase \"\"long\"\": ")
                .endsWith(",'=Gull," + segment + ",long\r\n")
                .doesNotContain("Tern");

        String mended = send(browser, refused.body().replace(",long", ",2500"));
        String again = report(
                browser,
                browser.submit(
                        mended, mended + "/check", asShown(browser.get(mended).body(), "x", "")));
        assertThat(again).contains("The one row can be imported");
        report(browser, browser.submit(mended + "/report", mended + "/write", Map.of()));
        assertThat(catalogue.exists(new PackageName("=Gull", segment, null))).isTrue();
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void asksWhichSegmentAnUnknownOneIs() {
        segments.create(segment, "Segment " + segment, "");
        StudioBrowser browser = browser(Role.DESIGNER);
        String upload = send(browser, "name,segment,wheelbase\na,\"Pick-up, small\",2500\n");
        String first = browser.get(upload).body();
        String checked = report(browser, browser.submit(upload, upload + "/check", asShown(first, "x", "")));
        assertThat(first).doesNotContain("id=\"segments\"");
        assertThat(checked).contains("Not among the segments: Pick-up, small.");

        String mapping = browser.get(upload).body();
        Map<String, String> answer = asShown(mapping, "word", "Pick-up, small");
        answer.put("pointed", segment);
        assertThat(mapping).contains("<input type=\"hidden\" name=\"word\" value=\"Pick-up, small\">");
        String again = report(browser, browser.submit(upload, upload + "/check", answer));

        assertThat(again).contains("The one row can be imported").doesNotContain("Not among the segments");
        assertThat(browser.get(upload).body())
                .as("is still told")
                .contains("Pick-up, small")
                .containsPattern("value=\"" + segment + "\"\\s+selected");
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void showsWhatAnUpdateChangesBeforeItWrites() {
        segments.create(segment, segment, "");
        long id = catalogue
                .addAll(
                        java.util.List.of(new PackageDraft(
                                "Gull", segment, 2020, Origin.DRAWING, Invented.least(Origin.DRAWING, 2500))),
                        new Author(null, "a test"))
                .get(0);
        StudioBrowser browser = browser(Role.DESIGNER);
        String upload = send(browser, "name,segment,year,W/B,F/OH,R/OH,O/A Lth\nGull,$S,2020,2512,800,700,4100\n");

        String checked = report(
                browser,
                browser.submit(
                        upload, upload + "/check", asShown(browser.get(upload).body(), "update", "true")));
        assertThat(checked)
                .contains("Gull (2020)")
                .contains("Wheelbase (mm)")
                .contains(">2500<")
                .contains(">2512<")
                .contains("Update one package")
                .as("the query about what does not close")
                .contains("Overall length, Front overhang, Wheelbase, Rear overhang");

        report(browser, browser.submit(upload + "/report", upload + "/write", Map.of()));
        assertThat(catalogue.get(id).dimensions().scalar(Dimension.WHEELBASE)).hasValue(2512);
    }

    @Test
    void keepsWhatWasChosenWhenItCannotBe() {
        StudioBrowser browser = browser(Role.LEAD);
        String upload = send(browser, "name,segment,wheelbase,x\na,$S,2500,1\n");
        Map<String, String> chosen = asShown(browser.get(upload).body(), "x", "");
        chosen.put("target", "field:name,,dimension:wheelbase,dimension:wheelbase");
        chosen.put("unit", ",,mm,");

        HttpResponse<String> answer = browser.submit(upload, upload + "/check", chosen);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("holds numbers in a unit").contains("href=\"#f-column-3\"");
        assertThat(asShown(answer.body(), "x", ""))
                .containsEntry("target", "field:name,,dimension:wheelbase,dimension:wheelbase,");

        chosen.put("unit", ",,mm,mm");
        answer = browser.submit(upload, upload + "/check", chosen);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("both set wheelbase")
                .contains("No column holds the segment")
                .contains("href=\"#f-columns\"");
    }

    @Test
    void refusesWhatIsNoTableOnTheSamePage() {
        StudioBrowser browser = browser(Role.LEAD);

        HttpResponse<String> picture = browser.upload(
                "/bring-in", "/bring-in", "cars.csv", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        HttpResponse<String> nothing = browser.upload("/bring-in", "/bring-in", "", new byte[0]);

        assertThat(picture.statusCode()).isEqualTo(415);
        assertThat(picture.body()).contains("a PNG picture").contains("f-file-error");
        assertThat(nothing.statusCode()).isEqualTo(400);
        assertThat(nothing.body()).contains("none was chosen");
    }

    @Test
    void saysThatAFileIsTooLarge() {
        StudioBrowser browser = browser(Role.LEAD);

        HttpResponse<String> answer = browser.upload("/bring-in", "/bring-in", "cars.csv", new byte[34 << 20]);

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(browser.get(location(answer)).body()).contains("at most 32 MB");
    }

    @Test
    void keepsAnUploadToItsOwner() {
        StudioBrowser owner = browser(Role.LEAD);
        String upload = send(owner, "name,segment,wheelbase\na,$S,2500\n");

        StudioBrowser other = browser(Role.LEAD);

        assertThat(owner.get("/bring-in").body()).contains("cars.csv is waiting here");
        assertThat(other.get(upload).statusCode()).isEqualTo(404);
        assertThat(other.submit("/bring-in", upload + "/discard", Map.of()).statusCode())
                .isEqualTo(404);
        assertThat(other.get("/bring-in").body()).doesNotContain("is waiting here");
        assertThat(owner.submit("/bring-in", upload + "/discard", Map.of()).statusCode())
                .isEqualTo(302);
        assertThat(owner.get(upload).statusCode()).isEqualTo(404);
    }

    @Test
    void takesASheetOfAWorkbook() throws Exception {
        java.io.ByteArrayOutputStream file = new java.io.ByteArrayOutputStream();
        try (var workbook = new org.apache.poi.xssf.usermodel.XSSFWorkbook()) {
            workbook.createSheet("Notes").createRow(0).createCell(0).setCellValue("nothing");
            workbook.createSheet("Cars").createRow(0).createCell(0).setCellValue("Vehicle");
            workbook.write(file);
        }
        StudioBrowser browser = browser(Role.LEAD);
        String upload = location(browser.upload("/bring-in", "/bring-in", "cars.xlsx", file.toByteArray()));

        assertThat(browser.get(upload).body()).contains("What the column nothing holds");
        browser.submit(upload, upload + "/sheet", Map.of("sheet", "Cars"));

        assertThat(browser.get(upload).body()).contains("What the column Vehicle holds");
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void bringsInJsonWithoutColumns() {
        segments.create(segment, segment, "");
        StudioBrowser browser = browser(Role.LEAD);
        String upload = send(
                browser, "{\"packages\":[{\"name\":\"j\",\"segment\":\"$S\",\"dimensions\":{\"wheelbase\":2500}}]}");

        assertThat(browser.get(upload).body()).doesNotContain("What the column ");
        report(browser, browser.submit(upload, upload + "/check", Map.of("partial", "true")));
        report(browser, browser.submit(upload + "/report", upload + "/write", Map.of()));

        assertThat(packages()).isEqualTo(1);
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void tellsAFileThatBreaksFurtherDown() {
        StudioBrowser browser = browser(Role.LEAD);
        String upload = send(browser, "name,segment,wheelbase\n" + "a,$S,2500\n".repeat(500) + "b,\"$S,2500\n");

        String failed = report(
                browser,
                browser.submit(
                        upload, upload + "/check", asShown(browser.get(upload).body(), "x", "")));

        assertThat(failed).contains("Nothing was imported").contains("Row 502").contains("quotation mark");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"TUTOR", "LEARNER", "VIEWER"})
    void isClosedToOthersButTakingOutIsNot(Role role) {
        segments.create(segment, "Segment " + segment, "");
        catalogue.addAll(
                java.util.List.of(
                        new PackageDraft("x", segment, null, Origin.DRAWING, Invented.least(Origin.DRAWING, 2500))),
                new Author(null, "a test"));
        StudioBrowser browser = browser(role);

        HttpResponse<String> page = browser.get("/bring-in");
        HttpResponse<String> file = browser.get("/bring-in/take-out?format=csv&segment=" + segment);

        assertThat(page.body()).contains("Leads and designers import files").contains("Segment " + segment);
        assertThat(browser.upload("/bring-in", "/bring-in", "cars.csv", "a".getBytes(StandardCharsets.UTF_8))
                        .statusCode())
                .isEqualTo(403);
        assertThat(browser.get("/bring-in/some-id").statusCode()).isEqualTo(403);
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.body()).startsWith("name,segment,").contains("x," + segment);
    }

    @ParameterizedTest
    @CsvSource({"full,2", "short,3", "inches,2"})
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void givesExamplesThatComeInAsTheyAre(String table, int rows) {
        StudioBrowser browser = browser(Role.LEAD);
        String example = browser.get("/bring-in/example.csv?table=" + table).body();
        String ours = example.replace("Example ", "Example " + segment + " ");
        String upload = location(
                browser.upload("/bring-in", "/bring-in", "example.csv", ours.getBytes(StandardCharsets.UTF_8)));
        Map<String, String> shown = asShown(browser.get(upload).body(), "createSegments", "true");
        assertThat(shown.get("target").split(",", -1))
                .hasSize(example.lines().findFirst().orElseThrow().split(",").length + 1);
        assertThat(shown.get("target")).doesNotContain(",,");

        String checked = report(browser, browser.submit(upload, upload + "/check", shown));
        assertThat(checked).contains("All " + rows + " rows can be imported").contains("No problems found");
        String written = report(browser, browser.submit(upload + "/report", upload + "/write", Map.of()));
        assertThat(written).contains(rows + " packages are in the catalogue");
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void letsADesignerMakeNoSegments() {
        StudioBrowser browser = browser(Role.DESIGNER);
        String upload = send(browser, "name,segment,wheelbase\na,$S,2500\n");
        String mapping = browser.get(upload).body();

        HttpResponse<String> answer =
                browser.submit(upload, upload + "/check", asShown(mapping, "createSegments", "true"));

        assertThat(mapping).doesNotContain("createSegments");
        assertThat(answer.statusCode()).isEqualTo(403);
    }
}
