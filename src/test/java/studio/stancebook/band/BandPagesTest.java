package studio.stancebook.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.quantity.Interval;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.QuantileType;

/** The pages of bands, used as without script. */
@StudioTest
class BandPagesTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Bands bands;

    private String segment = "";
    private String page = "";

    @BeforeEach
    void makeClassOfFive() {
        segment = Invented.key("band-pages");
        segments.create(segment, "Segment of a test", "");
        for (int wheels = 3; wheels <= 7; wheels++) {
            add(wheels);
        }
        page = "/segments/" + segment + "/bands/" + MEASURE;
    }

    private void add(double wheels) {
        catalogue.add(Invented.draft(segment, Invented.name("Invented"), 700 * wheels), new Author(null, "Tests"));
    }

    private static Map<String, String> form(String method, String step, int version, String... more) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("method", method);
        form.put("step", step);
        form.put("version", String.valueOf(version));
        form.put("reason", "Seen in the class");
        for (int i = 0; i < more.length; i += 2) {
            form.put(more[i], more[i + 1]);
        }
        return form;
    }

    /** With the origins ticked that the form of every method but a rule has ticked. */
    private HttpResponse<String> send(StudioBrowser browser, Map<String, String> form) {
        Map<String, String> sent = new LinkedHashMap<>(form);
        if (!"rule".equals(form.get("method"))) {
            sent.putIfAbsent("origins", "specification");
        }
        return browser.submit(page, page, sent);
    }

    @Test
    void showsEveryMeasureWithItsClass() {
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Percentile(0.1, 0.9, QuantileType.TYPE_7)),
                "",
                null,
                new Author(null, "Lead"));

        HttpResponse<String> shown = studio.browser(Role.VIEWER).get("/segments/" + segment + "/bands");

        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body())
                .contains("One measure has a band; the class has 5 packages")
                .contains("3.40 to 6.60")
                .contains("provisional, n = 5")
                .contains("Percentiles, version 1, n = 5")
                .contains("no values in the class")
                .doesNotContain("??");
    }

    @Test
    void triesABandOutWithoutSettingIt() {
        HttpResponse<String> tried = send(
                studio.browser(Role.LEAD),
                form("percentile", "try", 0, "lowerQuantile", "10", "upperQuantile", "90 %"));

        assertThat(tried.statusCode()).isEqualTo(200);
        assertThat(tried.body())
                .contains("3.40 to 6.60")
                .contains("2 of 5 values of the class would lie outside: 1 below, 1 above.")
                .doesNotContain("??");
        assertThat(bands.history(segment, MEASURE)).isEmpty();
    }

    @Test
    void setsABandAndSaysSo() {
        StudioBrowser lead = studio.browser(Role.LEAD);

        HttpResponse<String> set = send(lead, form("rule", "set", 0, "lower", "3,4", "upper", ""));

        assertThat(set.statusCode()).isEqualTo(302);
        assertThat(set.headers().firstValue("Location").orElseThrow()).endsWith(page);
        assertThat(lead.get(page).body())
                .contains("The band is set: version 1.")
                .contains("at least 3.40")
                .contains("Seen in the class");
        assertThat(bands.get(segment, MEASURE).range().limits()).isEqualTo(new Interval(3.4, Double.POSITIVE_INFINITY));
    }

    @Test
    void keepsWhatWasTypedAndSaysWhatIsWrong() {
        HttpResponse<String> refused = send(
                studio.browser(Role.LEAD), form("rule", "set", 0, "lower", "three", "upper", "3.7", "reason", "Kept"));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("&quot;three&quot; is not a number; write one such as 3.4.")
                .contains("value=\"three\"")
                .contains("value=\"3.7\"")
                .contains("value=\"Kept\"");
    }

    @Test
    void saysWhatTheClassCannotGive() {
        HttpResponse<String> refused = send(
                studio.browser(Role.LEAD), form("distribution-free", "set", 0, "content", "90", "confidence", "95"));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("46 are needed");
    }

    @Test
    void showsWhatIsInForceToWhoWasOvertaken() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Rule(3, 4, "First")),
                "First",
                null,
                new Author(null, "Ada Marsh"));

        HttpResponse<String> overtaken = send(lead, form("rule", "set", 0, "lower", "3.1", "upper", "4.1"));

        assertThat(overtaken.statusCode()).isIn(412, 428);
        assertThat(overtaken.body())
                .contains("Ada Marsh set version 1 while you were editing")
                .contains("3.00 to 4.00")
                .contains("value=\"3.1\"")
                .contains("name=\"version\" value=\"1\"");
        assertThat(send(lead, form("rule", "set", 1, "lower", "3.1", "upper", "4.1"))
                        .statusCode())
                .isEqualTo(302);
    }

    @Test
    void offersToComputeAgainWhenTheClassHasChanged() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Percentile(0, 1, QuantileType.TYPE_7)),
                "",
                null,
                new Author(null, "Lead"));
        assertThat(lead.get(page).body()).doesNotContain("The class has changed since");

        add(8);

        assertThat(lead.get(page).body())
                .contains("The class has changed since")
                .contains("3.00 to 8.00");
        assertThat(lead.get("/segments/" + segment + "/bands").body()).contains("The class has changed since");
        assertThat(lead.submit(page, page + "/again", Map.of("version", "1")).statusCode())
                .isEqualTo(302);
        assertThat(bands.get(segment, MEASURE).range().limits()).isEqualTo(new Interval(3, 8));
        assertThat(bands.get(segment, MEASURE).version()).isEqualTo(2);
    }

    @Test
    void withdrawsABandForAReason() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Rule(3, 4, "First")),
                "First",
                null,
                new Author(null, "Lead"));

        HttpResponse<String> without = lead.submit(page, page + "/withdraw", Map.of("version", "1", "withdrawal", " "));
        HttpResponse<String> with =
                lead.submit(page, page + "/withdraw", Map.of("version", "1", "withdrawal", "Says nothing here"));

        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(without.body()).contains("reason is missing; a withdrawal says why.");
        assertThat(with.statusCode()).isEqualTo(302);
        assertThat(lead.get(page).body()).contains("Says nothing here").contains("withdrawn");
        assertThat(bands.get(segment, MEASURE).inForce()).isFalse();
    }

    @Test
    void areReadOnlyForOthers() {
        for (Role role : new Role[] {Role.DESIGNER, Role.TUTOR, Role.LEARNER, Role.VIEWER}) {
            StudioBrowser browser = studio.browser(role);
            assertThat(browser.get(page).body()).doesNotContain("name=\"reason\"");
            assertThat(browser.submit("/account", page, form("rule", "set", 0, "lower", "3"))
                            .statusCode())
                    .isEqualTo(403);
            assertThat(browser.submit("/account", page + "/again", Map.of()).statusCode())
                    .isEqualTo(403);
            assertThat(browser.submit("/account", page + "/withdraw", Map.of()).statusCode())
                    .isEqualTo(403);
        }
    }

    @Test
    void doNotKnowWhatIsNotThere() {
        StudioBrowser lead = studio.browser(Role.LEAD);

        assertThat(lead.get("/segments/none-such/bands").statusCode()).isEqualTo(404);
        assertThat(lead.get("/segments/" + segment + "/bands/none-such").statusCode())
                .isEqualTo(404);
    }

    @Test
    void offerEveryMethodWithItsOwnNumbers() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        Map<String, String> inputs = Map.of(
                "rule", "lower",
                "percentile", "lowerQuantile",
                "tolerance", "content",
                "distribution-free", "confidence",
                "robust", "k");

        inputs.forEach((method, input) -> assertThat(
                        lead.get(page + "?method=" + method).body())
                .contains("name=\"" + input + "\"")
                .doesNotContain("??"));
    }

    @Test
    void beginWithTheTradesRulesWhereThereNeverWasABand() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        String all = "/segments/" + segment + "/bands";
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Rule(3, 4, "Ours")),
                "Ours",
                null,
                new Author(null, "Lead"));

        assertThat(lead.submit(all, all, Map.of("from", "off-road")).statusCode())
                .isEqualTo(302);

        int others = PracticeBands.of(VehicleType.OFF_ROAD).size() - 1;
        assertThat(lead.get(all).body()).contains(others + " bands are set.").doesNotContain("??");
        assertThat(bands.current(segment)).hasSize(others + 1);
        assertThat(bands.get(segment, MEASURE).reason()).isEqualTo("Ours");
        assertThat(bands.get(segment, "screen-aim-in-wheels").reason()).startsWith("Common practice, no source: ");
        assertThat(lead.submit(all, all, Map.of("from", "off-road")).statusCode())
                .isEqualTo(302);
        assertThat(bands.get(segment, "screen-aim-in-wheels").version()).isEqualTo(1);
        assertThat(lead.submit(all, all, Map.of("from", "hearsay")).statusCode())
                .isEqualTo(400);
        assertThat(studio.browser(Role.DESIGNER)
                        .submit("/account", all, Map.of("from", "off-road"))
                        .statusCode())
                .isEqualTo(403);
    }

    /** Five values are too few, eight are not; the smallest two are 3 and 4: 5 % by type 7 is 3 + 0.35. */
    @Test
    void beginWithTheClassWhereItIsLargeEnough() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        String all = "/segments/" + segment + "/bands";
        lead.submit(all, all, Map.of("from", "class"));
        assertThat(bands.current(segment)).isEmpty();

        add(8);
        catalogue.add(Invented.draft(segment, Invented.name("Invented"), 5600 + 300), new Author(null, "Tests"));
        catalogue.add(Invented.draft(segment, Invented.name("Invented"), 5600 + 350), new Author(null, "Tests"));
        lead.submit(all, all, Map.of("from", "class"));

        assertThat(bands.get(segment, MEASURE).range().limits().lower()).isCloseTo(3.35, offset(1e-9));
        assertThat(bands.get(segment, MEASURE).range().n()).isEqualTo(8);
    }
}
