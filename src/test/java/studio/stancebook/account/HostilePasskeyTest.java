package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** Passkeys under attack: without the form's token, without a session, with garbage. */
@StudioTest
@ExtendWith(OutputCaptureExtension.class)
class HostilePasskeyTest {

    /** The longest form of a stranger that is read, docs/operations.md, less what else is in this one. */
    private static final int FOR_STRANGERS = 16 * 1024 - 200;

    @Autowired
    StudioClients studio;

    @Autowired
    JdbcClient jdbc;

    private PasskeyVisits visits;

    @BeforeEach
    void invite() {
        visits = new PasskeyVisits(studio);
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
            visits.ask(browser, "/sign-in");
        }
        visits.post(browser, new SoftwareAuthenticator(studio.address()).show(visits.ask(browser, "/sign-in")));

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
        SoftwareAuthenticator device = visits.withPasskey(visits.somebody(Role.VIEWER), "A laptop");
        StudioBrowser browser = studio.browser();
        String shown = device.show(visits.ask(browser, "/sign-in"));

        assertThat(visits.post(browser, shown.replaceFirst("\"" + left + "\": \"[^\"]*\"", "\"" + left + "\": null"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(visits.post(browser, shown.replaceFirst("\"" + left + "\": \"...", "\"" + left + "\": \"AAA"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(output.getAll()).doesNotContain("\tat ");
    }

    @ParameterizedTest
    @MethodSource("garbage")
    void refusesGarbageWithoutATrace(String garbage, CapturedOutput output) {
        StudioBrowser stranger = studio.browser();
        visits.ask(stranger, "/sign-in");
        StudioBrowser browser = studio.browser(Role.VIEWER);
        visits.creation(browser, "A laptop");

        HttpResponse<String> signIn = visits.post(stranger, garbage);
        HttpResponse<String> made = visits.add(browser, "A laptop", garbage);

        boolean read = StudioBrowser.form(Map.of("credential", garbage)).length() < FOR_STRANGERS;
        assertThat(signIn.statusCode()).isEqualTo(read ? 403 : 413);
        assertThat(made.statusCode()).isEqualTo(422);
        assertThat(signIn.body() + made.body()).doesNotContain("Exception").doesNotContain("jackson");
        assertThat(output.getAll()).doesNotContain("\tat ");
    }

    private long sessions() {
        return jdbc.sql("SELECT count(*) FROM spring_session").query(Long.class).single();
    }
}
