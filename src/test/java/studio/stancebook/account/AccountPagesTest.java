package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.problem.ExpectedVersion;

/** The pages of people and of one's own account. */
@StudioTest
class AccountPagesTest {

    private static final AtomicInteger MADE = new AtomicInteger();
    private static final Pattern TOKEN = Pattern.compile("sbk_[A-Za-z0-9_-]{43}");

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService personService;

    @Test
    void addsAPerson() {
        StudioBrowser lead = studio.browser(Role.LEAD);
        String email = fresh();

        HttpResponse<String> answer = lead.submit(
                "/studio/people/new",
                "/studio/people",
                Map.of(
                        "email",
                        email,
                        "displayName",
                        "<b>Odd & Name</b>",
                        "role",
                        "tutor",
                        "password",
                        StudioClients.PASSWORD));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(lead.get("/studio/people?size=500").body())
                .contains(email)
                .contains("&lt;b&gt;Odd &amp; Name&lt;/b&gt;")
                .contains("is added");
        studio.browser().signIn(email, StudioClients.PASSWORD);
    }

    @Test
    void keepsWhatWasTypedWhenItIsRefused() {
        HttpResponse<String> answer = studio.browser(Role.LEAD)
                .submit(
                        "/studio/people/new",
                        "/studio/people",
                        Map.of(
                                "email",
                                "not an address",
                                "displayName",
                                "Typed Name",
                                "role",
                                "tutor",
                                "password",
                                "short"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("not an address")
                .contains("Typed Name")
                .contains("At least 12 characters")
                .contains("is not an e-mail address")
                .containsPattern("value=\"tutor\"[^>]*selected");
    }

    @Test
    void saysThatAnAddressIsTaken() {
        HttpResponse<String> answer = studio.browser(Role.LEAD)
                .submit(
                        "/studio/people/new",
                        "/studio/people",
                        Map.of(
                                "email",
                                studio.person(Role.TUTOR).email(),
                                "displayName",
                                "X",
                                "role",
                                "tutor",
                                "password",
                                StudioClients.PASSWORD));

        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("There is a person with the address");
    }

    @Test
    void changesAPersonAndTakesTheWayInFromThem() {
        SignedIn person = somebody(Role.DESIGNER);

        HttpResponse<String> answer = change(person, Map.of("displayName", "Changed", "role", "viewer"));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(personService.get(person.personId()).displayName()).isEqualTo("Changed");
        assertThat(studio.browser()
                        .trySigningIn(person.email(), StudioClients.PASSWORD)
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void showsWhatIsStoredBesideWhatWasTypedWhenSomebodyElseWasFaster() {
        SignedIn person = somebody(Role.DESIGNER);
        personService.change(person.personId(), new ExpectedVersion(0), new PersonChange("Their name", "tutor", true));

        HttpResponse<String> answer =
                change(person, Map.of("displayName", "My name", "role", "viewer", "active", "true"));
        HttpResponse<String> again =
                change(person, Map.of("displayName", "My name", "role", "viewer", "active", "true", "version", "1"));

        assertThat(answer.statusCode()).isEqualTo(412);
        assertThat(answer.body())
                .contains("Somebody else changed this person in the meantime")
                .contains("Their name, Tutor")
                .contains("value=\"My name\"")
                .contains("name=\"version\" value=\"1\"");
        assertThat(again.statusCode()).isEqualTo(302);
        assertThat(personService.get(person.personId()).displayName()).isEqualTo("My name");
    }

    @Test
    void setsANewPasswordForAPerson() {
        SignedIn person = somebody(Role.DESIGNER);
        String page = "/studio/people/" + person.personId();
        StudioBrowser lead = studio.browser(Role.LEAD);

        assertThat(lead.submit(page, page + "/password", Map.of("password", "short"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(lead.submit(page, page + "/password", Map.of("password", "a fresh password"))
                        .statusCode())
                .isEqualTo(302);
        studio.browser().signIn(person.email(), "a fresh password");
    }

    @Test
    void letsAPersonChangeTheirPasswordAndStaySignedInHereOnly() {
        SignedIn person = somebody(Role.VIEWER);
        StudioBrowser here = signedIn(person);
        StudioBrowser elsewhere = signedIn(person);

        HttpResponse<String> wrong = here.submit(
                "/account",
                "/account/password",
                Map.of("currentPassword", "no such password", "newPassword", "a fresh password"));
        HttpResponse<String> right = here.submit(
                "/account",
                "/account/password",
                Map.of("currentPassword", StudioClients.PASSWORD, "newPassword", "a fresh password"));

        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("This is not your current password.").doesNotContain("a fresh password");
        assertThat(right.statusCode()).isEqualTo(302);
        assertThat(here.get("/account").statusCode()).isEqualTo(200);
        assertThat(elsewhere.get("/account").statusCode()).isEqualTo(302);
    }

    @Test
    void showsATokenOnce() {
        StudioBrowser browser = signedIn(somebody(Role.VIEWER));

        HttpResponse<String> made = browser.submit("/account", "/account/tokens", Map.of("name", "plotter"));
        Matcher token = TOKEN.matcher(made.body());
        assertThat(token.find()).isTrue();
        String later = browser.get("/account").body();

        assertThat(made.headers().firstValue("Cache-Control"))
                .hasValueSatisfying(v -> assertThat(v).contains("no-store"));
        assertThat(later).contains("plotter").doesNotContain(token.group()).doesNotContain("You have no tokens");
        studio.withToken(token.group())
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isOk();

        Matcher revoke = Pattern.compile("/account/tokens/\\d+/revoke").matcher(later);
        assertThat(revoke.find()).isTrue();
        assertThat(browser.submit("/account", revoke.group(), Map.of()).statusCode())
                .isEqualTo(302);
        studio.withToken(token.group())
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isUnauthorized();
    }

    @Test
    void leadsEverybodyToWhatConcernsThem() {
        assertThat(studio.browser(Role.LEAD).get("/studio").body())
                .contains("/studio/people")
                .contains("/account");
        assertThat(studio.browser(Role.VIEWER).get("/studio").body()).doesNotContain("/studio/people");
        assertThat(signedIn(somebody(Role.VIEWER)).get("/account").body()).contains("You have no tokens");
    }

    @Test
    void saysWhenATokenHasNoName() {
        HttpResponse<String> answer =
                signedIn(somebody(Role.VIEWER)).submit("/account", "/account/tokens", Map.of("name", " "));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Write a name.");
    }

    @Test
    void closesThePageOfPeopleToEverybodyButLeads() {
        String page = "/studio/people/" + studio.person(Role.TUTOR).personId();

        assertThat(studio.browser(Role.DESIGNER).get(page).statusCode()).isEqualTo(403);
        assertThat(studio.browser(Role.DESIGNER)
                        .submit(
                                "/account",
                                page,
                                Map.of("displayName", "X", "role", "lead", "active", "true", "version", "0"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(personService.get(studio.person(Role.TUTOR).personId()).role())
                .isEqualTo(Role.TUTOR);
    }

    private HttpResponse<String> change(SignedIn person, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(Map.of("version", "0"));
        all.putAll(fields);
        String page = "/studio/people/" + person.personId();
        return studio.browser(Role.LEAD).submit(page, page, all);
    }

    private StudioBrowser signedIn(SignedIn person) {
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    private SignedIn somebody(Role role) {
        return studio.add(fresh(), "Somebody", role);
    }

    private static String fresh() {
        return "page" + MADE.incrementAndGet() + "@studio.example";
    }
}
