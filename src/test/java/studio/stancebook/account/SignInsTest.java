package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/** Where one is signed in, and how that ends. */
abstract class SignInsTest {

    private static final AtomicInteger MADE = new AtomicInteger();
    private static final Pattern END = Pattern.compile("/account/sign-ins/[0-9a-f-]{36}/end");

    @Autowired
    StudioClients studio;

    @Autowired
    JdbcClient jdbc;

    @Test
    void listsEveryPlaceAndMarksThisOne() {
        SignedIn person = somebody(Role.VIEWER);
        StudioBrowser here = signedIn(person);
        signedIn(person);
        signedIn(somebody(Role.VIEWER));

        String page = here.get("/account").body();

        assertThat(END.matcher(page).results()).hasSize(1);
        assertThat(page.split("this one", -1)).hasSize(2);
        assertThat(page).doesNotContain(here.cookie("session"));
    }

    @Test
    void signsOutAtOneOtherPlace() {
        SignedIn person = somebody(Role.DESIGNER);
        StudioBrowser here = signedIn(person);
        StudioBrowser there = signedIn(person);

        int status = here.submit("/account", endOfTheOther(here), Map.of()).statusCode();

        assertThat(status).isEqualTo(302);
        assertThat(there.get("/account").statusCode()).isEqualTo(302);
        assertThat(here.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void signsOutNobodyElse() {
        SignedIn person = somebody(Role.DESIGNER);
        StudioBrowser here = signedIn(person);
        signedIn(person);
        StudioBrowser stranger = signedIn(somebody(Role.DESIGNER));

        int status = stranger.submit("/account", endOfTheOther(here), Map.of()).statusCode();

        assertThat(status).isEqualTo(404);
        assertThat(here.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void signsOutEverywhereButKeepsTokens() {
        SignedIn person = somebody(Role.DESIGNER);
        StudioBrowser here = signedIn(person);
        StudioBrowser there = signedIn(person);
        Matcher token = Pattern.compile("sbk_[A-Za-z0-9_-]{43}")
                .matcher(here.submit("/account", "/account/tokens", Map.of("name", "kept"))
                        .body());
        assertThat(token.find()).isTrue();

        here.submit("/account", "/account/sign-ins/end", Map.of());

        assertThat(here.get("/account").statusCode()).isEqualTo(302);
        assertThat(there.get("/account").statusCode()).isEqualTo(302);
        studio.withToken(token.group())
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isOk();
    }

    @Test
    void letsALeadSignSomebodyOut() {
        SignedIn person = somebody(Role.LEARNER);
        StudioBrowser there = signedIn(person);
        StudioBrowser lead = studio.browser(Role.LEAD);
        String pageOfPerson = "/studio/people/" + person.personId();

        int status =
                lead.submit(pageOfPerson, pageOfPerson + "/sign-out", Map.of()).statusCode();

        assertThat(status).isEqualTo(302);
        assertThat(there.get("/account").statusCode()).isEqualTo(302);
        assertThat(lead.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void letsNobodyElseSignSomebodyOut() {
        SignedIn person = somebody(Role.LEARNER);
        StudioBrowser there = signedIn(person);

        int status = studio.browser(Role.DESIGNER)
                .submit("/account", "/studio/people/" + person.personId() + "/sign-out", Map.of())
                .statusCode();

        assertThat(status).isEqualTo(403);
        assertThat(there.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void keepsNeitherNameNorAddressWhereSessionsAreFound() {
        SignedIn person = somebody(Role.LEARNER);
        signedIn(person);

        assertThat(jdbc.sql("SELECT principal_name FROM spring_session WHERE principal_name IS NOT NULL")
                        .query(String.class)
                        .list())
                .contains("person " + person.personId())
                .allMatch(name -> name.matches("person \\d+"));
    }

    private static String endOfTheOther(StudioBrowser browser) {
        Matcher end = END.matcher(browser.get("/account").body());
        assertThat(end.find()).isTrue();
        return end.group();
    }

    private StudioBrowser signedIn(SignedIn person) {
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    private SignedIn somebody(Role role) {
        return studio.add("places" + MADE.incrementAndGet() + "@studio.example", "Somebody", role);
    }
}
