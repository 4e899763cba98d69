package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.FindByIndexNameSessionRepository;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.account.session.AgedSessions;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.ActivityRecord;
import studio.stancebook.problem.ExpectedVersion;

/** What takes a fresh proof of who one is, how it is given, and when a session ends whatever happens. */
@StudioTest
class ConfirmTest {

    private static final AtomicInteger MADE = new AtomicInteger();
    private static final Duration OLD = Duration.ofMinutes(11);

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService personService;

    @Autowired
    TokenService tokens;

    @Autowired
    ActivityRecord activity;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    FindByIndexNameSessionRepository<?> sessions;

    @ParameterizedTest
    @ValueSource(strings = {"/account/tokens/new", "/studio/people/new", "/studio/people/1", "/studio/backup"})
    void isAskedForBeforeTheFormIsShown(String page) {
        SignedIn lead = somebody(Role.LEAD);
        StudioBrowser browser = signedIn(lead);
        String ofSomebody = page.replace("/1", "/" + lead.personId());
        assertThat(browser.get(ofSomebody).statusCode()).isEqualTo(200);
        age(lead, OLD);

        HttpResponse<String> asked = browser.get(ofSomebody);

        assertThat(asked.statusCode()).isEqualTo(302);
        assertThat(location(asked)).endsWith("/account/confirm?back=" + ofSomebody.replace("/", "%2F"));
        assertThat(browser.get("/account/confirm").body()).contains("Confirm that it is you");
    }

    @ParameterizedTest
    @CsvSource({
        "/account/tokens, /account/tokens/new",
        "/account/sign-ins/end, /account",
        "/account/sign-ins/1-2/end, /account",
        "/studio/people, /studio/people/new",
        "/studio/people/7, /studio/people/7",
        "/studio/people/7/password, /studio/people/7",
        "/studio/people/7/sign-out, /studio/people/7",
        "/studio/backup, /studio/backup"
    })
    void isAskedForInsteadOfDoingWhatWasSent(String action, String page) {
        SignedIn lead = somebody(Role.LEAD);
        StudioBrowser browser = signedIn(lead);
        age(lead, OLD);
        long people = studio.countPeople();

        HttpResponse<String> asked = browser.submit(
                "/account",
                action,
                Map.of(
                        "name",
                        "X",
                        "displayName",
                        "X",
                        "role",
                        "lead",
                        "email",
                        "x@x.example",
                        "version",
                        "0",
                        "password",
                        StudioClients.PASSWORD));

        assertThat(asked.statusCode()).isEqualTo(302);
        assertThat(location(asked)).endsWith("/account/confirm?back=" + page.replace("/", "%2F"));
        assertThat(studio.countPeople()).isEqualTo(people);
        assertThat(tokens.list(lead)).isEmpty();
        assertThat(browser.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void isGivenByThePasswordAndLeadsBackToThePage() {
        SignedIn lead = somebody(Role.LEAD);
        StudioBrowser browser = signedIn(lead);
        age(lead, OLD);
        String before = browser.cookie("session");

        HttpResponse<String> given = confirm(browser, StudioClients.PASSWORD, "/studio/backup");

        assertThat(given.statusCode()).isEqualTo(302);
        assertThat(location(given)).endsWith("/studio/backup");
        assertThat(browser.get("/studio/backup").statusCode()).isEqualTo(200);
        assertThat(browser.cookie("session")).isNotEqualTo(before);
        assertThat(actions(lead)).startsWith("confirmed");
    }

    @Test
    void isNotGivenByAWrongPasswordWhichLeavesALine() {
        SignedIn lead = somebody(Role.LEAD);
        StudioBrowser browser = signedIn(lead);
        age(lead, OLD);

        HttpResponse<String> refused = confirm(browser, "not the password", "/studio/backup");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("This is not your current password.")
                .contains("value=\"/studio/backup\"");
        assertThat(browser.get("/studio/backup").statusCode()).isEqualTo(302);
        assertThat(actions(lead, "password")).startsWith("refused");
    }

    /** The limit of docs/operations.md: ten wrong passwords, and then not even the right one. */
    @Test
    void countsToTheLimitOfWrongPasswords() {
        SignedIn lead = somebody(Role.LEAD);
        StudioBrowser browser = signedIn(lead);
        for (int i = 0; i < 10; i++) {
            assertThat(confirm(browser, "not the password", "/account").statusCode())
                    .isEqualTo(422);
        }

        HttpResponse<String> eleventh = confirm(browser, StudioClients.PASSWORD, "/account");

        assertThat(eleventh.statusCode()).isEqualTo(429);
        assertThat(eleventh.body()).contains("Too many wrong passwords");
    }

    @Test
    void leadsToNoOtherServer() {
        StudioBrowser browser = signedIn(somebody(Role.VIEWER));

        HttpResponse<String> given = confirm(browser, StudioClients.PASSWORD, "//elsewhere.example/x");

        assertThat(location(given)).doesNotContain("elsewhere");
    }

    @Test
    void isNotAskedOfWhoeverMayNotAnyway() {
        SignedIn designer = somebody(Role.DESIGNER);
        StudioBrowser browser = signedIn(designer);
        age(designer, OLD);

        assertThat(browser.get("/studio/backup").statusCode()).isEqualTo(403);
    }

    @Test
    void endsASessionADayAfterSigningInThoughItIsUsedAndConfirmed() {
        SignedIn person = somebody(Role.VIEWER);
        StudioBrowser browser = signedIn(person);
        age(person, Duration.ofHours(23));
        assertThat(browser.get("/account").statusCode()).isEqualTo(200);
        confirm(browser, StudioClients.PASSWORD, "/account");
        assertThat(browser.get("/account/tokens/new").statusCode()).isEqualTo(200);
        age(person, Duration.ofHours(1));

        HttpResponse<String> after = browser.get("/account");

        assertThat(after.statusCode()).isEqualTo(302);
        assertThat(location(after)).endsWith("/sign-in");
    }

    @Test
    void endsTheSessionsOfWhoeverWasDeactivatedForAWhile() {
        SignedIn person = somebody(Role.DESIGNER);
        StudioBrowser browser = signedIn(person);

        personService.change(person.personId(), new ExpectedVersion(0), new PersonChange("Away", "designer", false));
        personService.change(person.personId(), new ExpectedVersion(1), new PersonChange("Back", "designer", true));

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
    }

    private HttpResponse<String> confirm(StudioBrowser browser, String password, String back) {
        return browser.submit("/account/confirm", "/account/confirm", Map.of("password", password, "back", back));
    }

    private List<String> actions(SignedIn person) {
        return actions(person, "sign-in");
    }

    private List<String> actions(SignedIn person, String kind) {
        ActivityFilter filter = new ActivityFilter(null, kind, String.valueOf(person.personId()), null, null);
        return activity.list(filter, PageRequest.of(0, 20)).getContent().stream()
                .map(ActivityLine::action)
                .toList();
    }

    private void age(SignedIn person, Duration by) {
        AgedSessions.of(sessions).age(person, by);
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private StudioBrowser signedIn(SignedIn person) {
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    /** With a password set long before the sign-ins that are made to look older. */
    private SignedIn somebody(Role role) {
        SignedIn made = studio.add("confirm" + MADE.incrementAndGet() + "@studio.example", "Somebody", role);
        jdbc.sql("UPDATE person SET password_changed_at = password_changed_at - INTERVAL '2' DAY WHERE id = :id")
                .param("id", made.personId())
                .update();
        return made;
    }
}
