package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.problem.ExpectedVersion;

/** Passkeys over HTTP, with an authenticator written from the standard; what a browser makes of them is tested apart. */
abstract class PasskeyTest {

    private static final Pattern REMOVE = Pattern.compile("/account/passkeys/(\\d+)/remove");

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    JdbcClient jdbc;

    private PasskeyVisits visits;

    @BeforeEach
    void invite() {
        visits = new PasskeyVisits(studio);
    }

    @ParameterizedTest
    @EnumSource
    void signsInWhoeverAddedIt(Role role) {
        SignedIn person = visits.somebody(role);
        SoftwareAuthenticator device = visits.withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        browser.get("/somewhere?page=2");

        HttpResponse<String> answer = visits.signIn(browser, device);

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/somewhere?page=2"));
        assertThat(browser.get("/account").body())
                .contains(person.email())
                .contains("A laptop")
                .contains("this one");
        assertThat(lines(person, "made", "passkey")).singleElement().asString().contains("A laptop");
        assertThat(lines(person, "begun", "sign-in")).last().asString().contains("\"passkey\"");
    }

    @Test
    void makesASessionOfItsOwn() {
        SignedIn person = visits.somebody(Role.DESIGNER);
        SoftwareAuthenticator device = visits.withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        String before = browser.cookie("session");

        HttpResponse<String> answer = browser.submit(
                "/account", "/sign-in/passkey", Map.of("credential", device.show(visits.ask(browser, "/account"))));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(browser.cookie("session")).isNotEmpty().isNotEqualTo(before);
    }

    @Test
    void signsInOnceForEachChallenge() {
        SoftwareAuthenticator device = visits.withPasskey(visits.somebody(Role.DESIGNER), "A laptop");
        StudioBrowser browser = studio.browser();
        String challenge = visits.ask(browser, "/sign-in");
        String cookie = browser.cookie("passkey-challenge");
        String shown = device.show(challenge);

        List<Integer> answers = IntStream.range(0, 8)
                .parallel()
                .mapToObj(i -> {
                    StudioBrowser copy = studio.browser();
                    copy.keep("passkey-challenge", cookie);
                    return visits.post(copy, shown).statusCode();
                })
                .toList();

        assertThat(answers).hasSize(8).containsOnlyOnce(302).containsOnly(302, 403);
    }

    @Test
    void signsInWhoeverWasAskedAlone() {
        SoftwareAuthenticator device = visits.withPasskey(visits.somebody(Role.DESIGNER), "A laptop");
        StudioBrowser other = studio.browser();
        visits.ask(other, "/sign-in");

        HttpResponse<String> answer = visits.post(other, device.show(visits.ask(studio.browser(), "/sign-in")));

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("was not accepted");
    }

    /** Web Authentication Level 3, 7.2: origin, user verification, and a signature count that goes up. */
    @Test
    void refusesWhatTheStandardRefuses() {
        SignedIn person = visits.somebody(Role.DESIGNER);
        SoftwareAuthenticator device = visits.withPasskey(person, "A laptop");

        assertThat(visits.signIn(studio.browser(), device.at("https://elsewhere.example"))
                        .statusCode())
                .isEqualTo(403);
        device.at(studio.address()).counting(5);
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(302);
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        assertThat(visits.signIn(studio.browser(), device.counting(4)).statusCode())
                .isEqualTo(403);
        assertThat(visits.signIn(studio.browser(), device.counting(6).withoutKnowingItsUser())
                        .statusCode())
                .isEqualTo(403);
        assertThat(lines(person, "refused", "sign-in")).hasSize(4);
    }

    @Test
    void refusesWhoMayNotSignInAnyMore() {
        SignedIn person = visits.somebody(Role.DESIGNER);
        SoftwareAuthenticator device = visits.withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        visits.signIn(browser, device);

        change(person, "false");

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        change(person, "true");
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(302);
    }

    private void change(SignedIn person, String active) {
        long version = people.get(person.personId()).version();
        people.change(
                person.personId(),
                new ExpectedVersion(version),
                new PersonChange(person.name(), person.role().key(), Boolean.valueOf(active)));
    }

    @Test
    void isGoneWithAPasswordThatALeadSets() {
        SignedIn person = visits.somebody(Role.DESIGNER);
        SoftwareAuthenticator device = visits.withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        visits.signIn(browser, device);

        people.resetPassword(person.personId(), "another password for tests");

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        assertThat(lines(person, "password reset", "person"))
                .singleElement()
                .asString()
                .contains("passkeys removed");
    }

    @Test
    void isRemovedByItsOwnerAlone() {
        SignedIn person = visits.somebody(Role.VIEWER);
        SoftwareAuthenticator device = visits.withPasskey(person, "A laptop");
        StudioBrowser owner = visits.signedIn(person);
        String remove = REMOVE.matcher(owner.get("/account").body())
                .results()
                .map(MatchResult::group)
                .findFirst()
                .orElseThrow();

        int others =
                studio.browser(Role.LEAD).submit("/account", remove, Map.of()).statusCode();
        assertThat(others).isEqualTo(404);
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(302);

        assertThat(owner.submit("/account", remove, Map.of()).statusCode()).isEqualTo(302);
        assertThat(visits.signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        assertThat(lines(person, "removed", "passkey")).hasSize(1);
    }

    @Test
    void isMadeOnceInTheSessionThatAsked() {
        SignedIn person = visits.somebody(Role.DESIGNER);
        StudioBrowser browser = visits.signedIn(person);
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        String made = device.make(visits.creation(browser, "A laptop"));

        assertThat(visits.add(visits.signedIn(person), "A laptop", made).statusCode())
                .isEqualTo(422);
        assertThat(visits.add(browser, "A laptop", made).statusCode()).isEqualTo(302);
        assertThat(visits.add(browser, "A laptop", made).statusCode()).isEqualTo(422);
        visits.creation(browser, "Another");
        assertThat(visits.add(browser, "Another", made).body())
                .contains("is not a passkey that was made here just now");
    }

    @Test
    void isMadeForWhoeverAskedAlone() {
        SignedIn first = visits.somebody(Role.DESIGNER);
        SignedIn second = visits.somebody(Role.DESIGNER);
        StudioBrowser browser = visits.signedIn(first);
        String made = new SoftwareAuthenticator(studio.address()).make(visits.creation(browser, "A laptop"));
        browser.submit("/account", "/sign-in", Map.of("email", second.email(), "password", StudioClients.PASSWORD));

        HttpResponse<String> answer = visits.add(browser, "A laptop", made);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("No passkey is being made in this session");
    }

    @Test
    void isMadeAtThisAddressByWhoeverIsKnownToTheDevice() {
        StudioBrowser browser = visits.signedIn(visits.somebody(Role.DESIGNER));
        SoftwareAuthenticator astray = new SoftwareAuthenticator("https://elsewhere.example");
        SoftwareAuthenticator careless = new SoftwareAuthenticator(studio.address()).withoutKnowingItsUser();

        assertThat(visits.add(browser, "A", astray.make(visits.creation(browser, "A")))
                        .statusCode())
                .isEqualTo(422);
        assertThat(visits.add(browser, "A", careless.make(visits.creation(browser, "A")))
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void belongsToNobodyElse() {
        StudioBrowser one = visits.signedIn(visits.somebody(Role.DESIGNER));
        StudioBrowser other = visits.signedIn(visits.somebody(Role.DESIGNER));
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        visits.add(one, "A laptop", device.make(visits.creation(one, "A laptop")));

        HttpResponse<String> answer = visits.add(other, "Mine", device.make(visits.creation(other, "Mine")));

        assertThat(answer.statusCode()).isEqualTo(422);
    }

    @ParameterizedTest
    @CsvSource({"'', Write a label.", "' ', Write a label."})
    void hasALabel(String label, String words) {
        StudioBrowser browser = visits.signedIn(visits.somebody(Role.DESIGNER));

        HttpResponse<String> options =
                browser.submit("/account/passkeys/new", "/account/passkeys/options", Map.of("label", label));
        HttpResponse<String> answer = visits.add(browser, label, "{}");

        assertThat(options.statusCode()).isEqualTo(422);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(words);
    }

    @Test
    void isOneOfTwentyAtMost() {
        SignedIn person = visits.somebody(Role.DESIGNER);
        StudioBrowser browser = visits.signedIn(person);
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        String made = device.make(visits.creation(browser, "The last one"));
        for (int i = 0; i < 20; i++) {
            jdbc.sql(
                            "INSERT INTO passkey (person_id, label, credential_id, user_handle, public_key, attestation_object,"
                                    + " transports, uv_initialized, backup_eligible, backup_state, signature_count, created_at)"
                                    + " VALUES (?, 'One of many', ?, ?, 'AA', 'AA', '', TRUE, FALSE, FALSE, 0, ?)")
                    .params(List.of(
                            person.personId(),
                            device.credentialId() + i,
                            "AA",
                            OffsetDateTime.parse("2031-05-06T07:08:09Z")))
                    .update();
        }

        assertThat(visits.add(browser, "The last one", made).body()).contains("as many as there may be");
    }

    /** What changed, of the lines about a person or by them, oldest first. */
    private List<String> lines(SignedIn person, String action, String kind) {
        return jdbc.sql("SELECT changes FROM activity_line WHERE action = ? AND kind = ?"
                        + " AND (person_id = ? OR kind <> 'passkey' AND subject = ?) ORDER BY number")
                .params(action, kind, person.personId(), String.valueOf(person.personId()))
                .query(String.class)
                .list();
    }
}
