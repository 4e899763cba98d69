package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Base64;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.Staff;
import studio.stancebook.problem.ExpectedVersion;

/** Passkeys over HTTP, with an authenticator written from the standard; what a browser makes of them is tested apart. */
@ExtendWith(OutputCaptureExtension.class)
abstract class PasskeyTest {

    private static final Pattern REMOVE = Pattern.compile("/account/passkeys/(\\d+)/remove");

    @Autowired
    StudioClients studio;

    @Autowired
    Staff staff;

    @Autowired
    JdbcClient jdbc;

    @ParameterizedTest
    @EnumSource
    void signsInWhoeverAddedIt(Role role) {
        SignedIn person = somebody(role);
        SoftwareAuthenticator device = withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        browser.get("/somewhere?page=2");

        HttpResponse<String> answer = signIn(browser, device);

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
        SignedIn person = somebody(Role.DESIGNER);
        SoftwareAuthenticator device = withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        String before = browser.cookie("session");

        HttpResponse<String> answer = browser.submit(
                "/account", "/sign-in/passkey", Map.of("credential", device.show(ask(browser, "/account"))));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(browser.cookie("session")).isNotEmpty().isNotEqualTo(before);
    }

    @Test
    void signsInOnceForEachChallenge() {
        SoftwareAuthenticator device = withPasskey(somebody(Role.DESIGNER), "A laptop");
        StudioBrowser browser = studio.browser();
        String challenge = ask(browser, "/sign-in");
        String cookie = browser.cookie("passkey-challenge");
        String shown = device.show(challenge);

        List<Integer> answers = IntStream.range(0, 8)
                .parallel()
                .mapToObj(i -> {
                    StudioBrowser copy = studio.browser();
                    copy.keep("passkey-challenge", cookie);
                    return post(copy, shown).statusCode();
                })
                .toList();

        assertThat(answers).hasSize(8).containsOnlyOnce(302).containsOnly(302, 403);
    }

    @Test
    void signsInWhoeverWasAskedAlone() {
        SoftwareAuthenticator device = withPasskey(somebody(Role.DESIGNER), "A laptop");
        StudioBrowser other = studio.browser();
        ask(other, "/sign-in");

        HttpResponse<String> answer = post(other, device.show(ask(studio.browser(), "/sign-in")));

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("was not accepted");
    }

    /** Web Authentication Level 3, 7.2: origin, user verification, and a signature count that goes up. */
    @Test
    void refusesWhatTheStandardRefuses() {
        SignedIn person = somebody(Role.DESIGNER);
        SoftwareAuthenticator device = withPasskey(person, "A laptop");

        assertThat(signIn(studio.browser(), device.at("https://elsewhere.example"))
                        .statusCode())
                .isEqualTo(403);
        device.at(studio.address()).counting(5);
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(302);
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        assertThat(signIn(studio.browser(), device.counting(4)).statusCode()).isEqualTo(403);
        assertThat(signIn(studio.browser(), device.counting(6).withoutKnowingItsUser())
                        .statusCode())
                .isEqualTo(403);
        assertThat(lines(person, "refused", "sign-in")).hasSize(4);
    }

    @Test
    void refusesWhoMayNotSignInAnyMore() {
        SignedIn person = somebody(Role.DESIGNER);
        SoftwareAuthenticator device = withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        signIn(browser, device);

        change(person, "false");

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        change(person, "true");
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(302);
    }

    private void change(SignedIn person, String active) {
        long version = staff.get(person.personId()).version();
        staff.change(
                person.personId(),
                new ExpectedVersion(version),
                new PersonChange(person.name(), person.role().key(), Boolean.valueOf(active)));
    }

    @Test
    void isGoneWithAPasswordThatALeadSets() {
        SignedIn person = somebody(Role.DESIGNER);
        SoftwareAuthenticator device = withPasskey(person, "A laptop");
        StudioBrowser browser = studio.browser();
        signIn(browser, device);

        staff.resetPassword(person.personId(), "another password for tests");

        assertThat(browser.get("/account").statusCode()).isEqualTo(302);
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        assertThat(lines(person, "password reset", "person"))
                .singleElement()
                .asString()
                .contains("passkeys removed");
    }

    @Test
    void isRemovedByItsOwnerAlone() {
        SignedIn person = somebody(Role.VIEWER);
        SoftwareAuthenticator device = withPasskey(person, "A laptop");
        StudioBrowser owner = signedIn(person);
        String remove = REMOVE.matcher(owner.get("/account").body())
                .results()
                .map(MatchResult::group)
                .findFirst()
                .orElseThrow();

        int others =
                studio.browser(Role.LEAD).submit("/account", remove, Map.of()).statusCode();
        assertThat(others).isEqualTo(404);
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(302);

        assertThat(owner.submit("/account", remove, Map.of()).statusCode()).isEqualTo(302);
        assertThat(signIn(studio.browser(), device).statusCode()).isEqualTo(403);
        assertThat(lines(person, "removed", "passkey")).hasSize(1);
    }

    @Test
    void isMadeOnceInTheSessionThatAsked() {
        SignedIn person = somebody(Role.DESIGNER);
        StudioBrowser browser = signedIn(person);
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        String made = device.make(creation(browser, "A laptop"));

        assertThat(add(signedIn(person), "A laptop", made).statusCode()).isEqualTo(422);
        assertThat(add(browser, "A laptop", made).statusCode()).isEqualTo(302);
        assertThat(add(browser, "A laptop", made).statusCode()).isEqualTo(422);
        creation(browser, "Another");
        assertThat(add(browser, "Another", made).body()).contains("is not a passkey that was made here just now");
    }

    @Test
    void isMadeForWhoeverAskedAlone() {
        SignedIn first = somebody(Role.DESIGNER);
        SignedIn second = somebody(Role.DESIGNER);
        StudioBrowser browser = signedIn(first);
        String made = new SoftwareAuthenticator(studio.address()).make(creation(browser, "A laptop"));
        browser.submit("/account", "/sign-in", Map.of("email", second.email(), "password", StudioClients.PASSWORD));

        HttpResponse<String> answer = add(browser, "A laptop", made);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("No passkey is being made in this session");
    }

    @Test
    void isMadeAtThisAddressByWhoeverIsKnownToTheDevice() {
        StudioBrowser browser = signedIn(somebody(Role.DESIGNER));
        SoftwareAuthenticator astray = new SoftwareAuthenticator("https://elsewhere.example");
        SoftwareAuthenticator careless = new SoftwareAuthenticator(studio.address()).withoutKnowingItsUser();

        assertThat(add(browser, "A", astray.make(creation(browser, "A"))).statusCode())
                .isEqualTo(422);
        assertThat(add(browser, "A", careless.make(creation(browser, "A"))).statusCode())
                .isEqualTo(422);
    }

    @Test
    void belongsToNobodyElse() {
        StudioBrowser one = signedIn(somebody(Role.DESIGNER));
        StudioBrowser other = signedIn(somebody(Role.DESIGNER));
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        add(one, "A laptop", device.make(creation(one, "A laptop")));

        HttpResponse<String> answer = add(other, "Mine", device.make(creation(other, "Mine")));

        assertThat(answer.statusCode()).isEqualTo(422);
    }

    @ParameterizedTest
    @CsvSource({"'', A passkey has a label of 1 to 100", "' ', A passkey has a label of 1 to 100"})
    void hasALabel(String label, String words) {
        StudioBrowser browser = signedIn(somebody(Role.DESIGNER));

        HttpResponse<String> options = browser.submit("/account", "/account/passkeys/options", Map.of("label", label));
        HttpResponse<String> answer = add(browser, label, "{}");

        assertThat(options.statusCode()).isEqualTo(422);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(words);
    }

    @Test
    void isOneOfTwentyAtMost() {
        SignedIn person = somebody(Role.DESIGNER);
        StudioBrowser browser = signedIn(person);
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        String made = device.make(creation(browser, "The last one"));
        for (int i = 0; i < 20; i++) {
            jdbc.sql(
                            "INSERT INTO passkey (person_id, label, credential_id, user_handle, public_key, attestation_object,"
                                    + " transports, uv_initialized, backup_eligible, backup_state, signature_count, created_at)"
                                    + " VALUES (?, 'One of many', ?, ?, 'AA', 'AA', '', TRUE, FALSE, FALSE, 0, ?)")
                    .params(List.of(
                            person.personId(),
                            device.credentialId() + i,
                            "AA",
                            java.time.OffsetDateTime.parse("2031-05-06T07:08:09Z")))
                    .update();
        }

        assertThat(add(browser, "The last one", made).body()).contains("as many as there may be");
    }

    @Test
    void takesAFormWithItsToken() {
        StudioBrowser browser = studio.browser(Role.DESIGNER);
        for (String path : List.of(
                "/sign-in/passkey",
                "/sign-in/passkey/options",
                "/account/passkeys",
                "/account/passkeys/options",
                "/account/passkeys/1/remove")) {
            assertThat(browser.post(path, Map.of("label", "A laptop")).statusCode())
                    .as(path)
                    .isEqualTo(403);
        }
    }

    @Test
    void isAddedBySomebodyWhoIsSignedIn() {
        HttpResponse<String> answer =
                studio.browser().submit("/sign-in", "/account/passkeys/options", Map.of("label", "A laptop"));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/sign-in"));
    }

    @Test
    void makesNoSessionOfAStranger() {
        StudioBrowser browser = studio.browser();
        long before = sessions();

        for (int i = 0; i < 60; i++) {
            ask(browser, "/sign-in");
        }
        post(browser, new SoftwareAuthenticator(studio.address()).show(ask(browser, "/sign-in")));

        assertThat(sessions()).isEqualTo(before);
        assertThat(browser.cookie("session")).isEmpty();
    }

    static List<String> garbage() {
        String deep = "[".repeat(5_000) + "]".repeat(5_000);
        return List.of(
                "",
                "{",
                "null",
                "[]",
                "{}",
                "\u0000",
                deep,
                "{\"rawId\": " + deep + "}",
                "{\"id\": \"AA\", \"rawId\": \"AA\", \"type\": \"public-key\", \"response\": null}",
                "{\"id\": \"AA\", \"rawId\": \"not base64!\", \"type\": \"public-key\", \"response\": {}}",
                "{\"id\": \"AA\", \"rawId\": \"AA\", \"type\": \"public-key\", \"response\": {\"attestationObject\": \"v2\","
                        + " \"clientDataJSON\": \"e30\", \"authenticatorData\": \"AA\", \"signature\": \"AA\"}}",
                "{\"id\": \"AA\", \"rawId\": \"AA\", \"type\": \"public-key\", \"response\": {\"attestationObject\":"
                        + " \"m3______9_____w\", \"clientDataJSON\": \"e30\"}}",
                attested("5B7FFFFFFFFFFFFFFF"),
                attested("9F".repeat(5_000)),
                attested("81".repeat(5_000)),
                "\"" + "A".repeat(300_000) + "\"");
    }

    /** With an attestation object of these bytes, in hexadecimal. */
    private static String attested(String bytes) {
        String written = Base64.getUrlEncoder().encodeToString(HexFormat.of().parseHex(bytes));
        return "{\"id\": \"AA\", \"rawId\": \"AA\", \"type\": \"public-key\", \"response\": {\"attestationObject\": \""
                + written + "\", \"clientDataJSON\": \"e30\"}}";
    }

    @ParameterizedTest
    @ValueSource(strings = {"clientDataJSON", "authenticatorData", "signature"})
    void refusesAKnownPasskeyWithoutProof(String left, CapturedOutput output) {
        SoftwareAuthenticator device = withPasskey(somebody(Role.VIEWER), "A laptop");
        StudioBrowser browser = studio.browser();
        String shown = device.show(ask(browser, "/sign-in"));

        assertThat(post(browser, shown.replaceFirst("\"" + left + "\": \"[^\"]*\"", "\"" + left + "\": null"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(post(browser, shown.replaceFirst("\"" + left + "\": \"...", "\"" + left + "\": \"AAA"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(output.getAll()).doesNotContain("\tat ");
    }

    @ParameterizedTest
    @MethodSource("garbage")
    void refusesGarbageWithoutATrace(String garbage, CapturedOutput output) {
        StudioBrowser stranger = studio.browser();
        ask(stranger, "/sign-in");
        StudioBrowser browser = studio.browser(Role.VIEWER);
        creation(browser, "A laptop");

        HttpResponse<String> signIn = post(stranger, garbage);
        HttpResponse<String> made = add(browser, "A laptop", garbage);

        assertThat(signIn.statusCode()).isEqualTo(403);
        assertThat(made.statusCode()).isEqualTo(422);
        assertThat(signIn.body() + made.body()).doesNotContain("Exception").doesNotContain("jackson");
        assertThat(output.getAll()).doesNotContain("\tat ");
    }

    /** Signs in by password, adds a passkey, and hands over the authenticator that has it. */
    private SoftwareAuthenticator withPasskey(SignedIn person, String label) {
        StudioBrowser browser = signedIn(person);
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        HttpResponse<String> answer = add(browser, label, device.make(creation(browser, label)));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        return device;
    }

    private static String creation(StudioBrowser browser, String label) {
        return browser.submit("/account", "/account/passkeys/options", Map.of("label", label))
                .body();
    }

    private static HttpResponse<String> add(StudioBrowser browser, String label, String credential) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("label", label));
        fields.put("credential", credential);
        return browser.submit("/account", "/account/passkeys", fields);
    }

    private static String ask(StudioBrowser browser, String pageOfForm) {
        return browser.submit(pageOfForm, "/sign-in/passkey/options", Map.of()).body();
    }

    private static HttpResponse<String> post(StudioBrowser browser, String shown) {
        return browser.submit("/sign-in", "/sign-in/passkey", Collections.singletonMap("credential", shown));
    }

    private static HttpResponse<String> signIn(StudioBrowser browser, SoftwareAuthenticator device) {
        return post(browser, device.show(ask(browser, "/sign-in")));
    }

    private StudioBrowser signedIn(SignedIn person) {
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    private SignedIn somebody(Role role) {
        String name = java.util.UUID.randomUUID().toString();
        return studio.add(name + "@passkeys.example", "Somebody " + name.substring(0, 8), role);
    }

    private long sessions() {
        return jdbc.sql("SELECT count(*) FROM spring_session").query(Long.class).single();
    }

    /** What changed, of the lines about a person or by them, oldest first. */
    private List<String> lines(SignedIn person, String action, String kind) {
        return jdbc.sql("SELECT changes FROM activity_line WHERE action = ? AND kind = ?"
                        + " AND (person_id = ? OR subject = ?) ORDER BY number")
                .params(action, kind, person.personId(), String.valueOf(person.personId()))
                .query(String.class)
                .list();
    }
}
