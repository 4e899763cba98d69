package studio.stancebook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.rights.AnswerChecks;

/** Every form of every page, filled with anything: the answer is a page, never a failure. */
@StudioTest
@TestPropertySource(properties = "stancebook.hostile=forms")
class RandomFormsTest {

    private static final int ROUNDS = Integer.getInteger("stancebook.rounds", 3);
    private static final long SEED = Long.getLong("stancebook.seed", 20_261_125L);

    /** What would end the session that asks, and tells nothing. */
    private static final Set<String> LEFT_OUT =
            Set.of("/sign-out", "/sign-in", "/account/sign-ins/end", "/account/password", "/studio/backup");

    private static final byte[] TABLE =
            "name,segment,wheelbase\nInvented a,forms,2800\n<b>,forms,x\n".getBytes(StandardCharsets.UTF_8);

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private final Map<String, String> faults = new TreeMap<>();
    private final Set<String> kinds = new HashSet<>();
    private StudioBrowser browser = new StudioBrowser("");
    private int leads;
    private int sent;

    @BeforeEach
    void makeSomethingToEdit() {
        segments.create("forms", "Class of forms", "");
        for (int i = 0; i < 4; i++) {
            catalogue.add(Invented.draft("forms", Invented.name("Invented"), 2700), new Author(null, "Tests"));
        }
        signInAsFreshLead();
        browser.submit(
                "/proposals/new",
                "/proposals",
                Map.of(
                        "name", "Form tern",
                        "segment", "forms",
                        "dimensions.wheelbase", "2800",
                        "dimensions.frontTyreDiameter", "700",
                        "dimensions.rearTyreDiameter", "700"));
        browser.upload("/bring-in", "/bring-in", "a.csv", TABLE);
    }

    @Test
    void areAnsweredByAPageWhateverIsInThem() {
        for (String page : Crawl.from(browser, 2).keySet()) {
            for (int round = 0; round < ROUNDS; round++) {
                fillFormsOf(page, round);
            }
        }
        System.out.println(sent + " forms sent, of " + kinds.size() + " kinds");

        assertThat(faults).isEmpty();
        assertThat(kinds).hasSizeGreaterThan(20);
    }

    private void fillFormsOf(String page, int round) {
        HttpResponse<String> opened = browser.get(page);
        if (opened.statusCode() == 302) {
            signInAsFreshLead();
            opened = browser.get(page);
        }
        for (Element form : Jsoup.parse(opened.body()).select("form[method=post]")) {
            String action = form.attr("action").isEmpty() ? page : form.attr("action");
            if (!LEFT_OUT.contains(action)) {
                Chance chance = new Chance(SEED + round, sent++);
                kinds.add(action.replaceAll("[0-9]+", "*"));
                check(action, filled(form, chance));
            }
        }
    }

    private void check(String action, Map<String, String> fields) {
        HttpResponse<String> answer = browser.post(action, fields);
        List<String> inside = answer.statusCode() >= 400 ? AnswerChecks.inside(answer.body()) : List.of();
        if (answer.statusCode() >= 500 || !inside.isEmpty()) {
            faults.putIfAbsent(action.replaceAll("[0-9]+", "*"), answer.statusCode() + " " + inside + " to " + fields);
        }
    }

    private static Map<String, String> filled(Element form, Chance chance) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Element field : form.select("input[name], select[name], textarea[name], button[name]")) {
            String name = field.attr("name");
            if (name.equals("_csrf") || !chance.oneIn(12)) {
                fields.put(name, name.equals("_csrf") ? field.attr("value") : value(field, chance));
            }
        }
        if (chance.oneIn(10)) {
            fields.put(chance.of("dimensions[0]", "class.name", "a[99999999]", "dimensions.", "x.y.z"), "1");
        }
        return fields;
    }

    private static String value(Element field, Chance chance) {
        List<String> fitting = new ArrayList<>(field.select("option").eachAttr("value"));
        if (fitting.isEmpty()) {
            fitting.add(field.val());
        }
        return switch (chance.below(6)) {
            case 0, 1 -> HostileText.any(chance);
            case 2 -> chance.of("0", "-1", "1e9", "1e309", "9".repeat(400), "NaN", "2800", "112 in", "0,5", "1/3");
            default -> chance.of(fitting);
        };
    }

    /** Forms change roles and end sessions, of whoever fills them too. */
    private void signInAsFreshLead() {
        SignedIn lead = studio.add("forms-" + leads++ + "@studio.example", "Lead of forms", Role.LEAD);
        browser = studio.browser();
        browser.signIn(lead.email(), StudioClients.PASSWORD);
    }
}
