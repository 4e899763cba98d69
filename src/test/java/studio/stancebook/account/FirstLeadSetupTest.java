package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import studio.stancebook.Stancebook;
import studio.stancebook.StudioBrowser;
import studio.stancebook.access.Role;

/** The first start of a studio, and the ones after it. */
@ExtendWith(OutputCaptureExtension.class)
class FirstLeadSetupTest {

    private static final String PASSWORD = "drawn with tape";

    @TempDir
    Path data;

    private final String database = "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1";

    @Test
    void tellsALinkThatMakesTheFirstLeadOnce(CapturedOutput output) {
        try (ConfigurableApplicationContext studio = start()) {
            String link = found(output, "/setup\\?key=[A-Za-z0-9_-]{43}");
            StudioBrowser browser = browser(studio);

            assertThat(browser.get("/setup").statusCode()).isEqualTo(403);
            assertThat(browser.get(link.substring(0, link.length() - 1)).statusCode())
                    .isEqualTo(403);
            assertThat(browser.get(link).statusCode()).isEqualTo(200);
            assertThat(submit(browser, link, "too short").statusCode()).isEqualTo(422);
            assertThat(submit(browser, link, "password1234").statusCode()).isEqualTo(422);
            HttpResponse<String> made = submit(browser, link, PASSWORD);
            HttpResponse<String> again = browser.get(link);
            browser.signIn("founder@studio.example", PASSWORD);

            assertThat(made.statusCode()).isEqualTo(302);
            assertThat(again.statusCode()).isEqualTo(403);
            assertThat(browser.get("/studio/people").body()).contains("founder@studio.example");
        }
    }

    @Test
    void keepsWhatWasTypedOnTheSetupPageButThePasswords(CapturedOutput output) {
        try (ConfigurableApplicationContext studio = start()) {
            String link = found(output, "/setup\\?key=[A-Za-z0-9_-]{43}");

            HttpResponse<String> refused = browser(studio)
                    .submit(
                            link,
                            "/setup",
                            Map.of(
                                    "key",
                                    key(link),
                                    "email",
                                    "founder@studio.example",
                                    "displayName",
                                    "Fo Under",
                                    "password",
                                    PASSWORD,
                                    "again",
                                    PASSWORD + "x"));

            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body())
                    .contains("not the same password")
                    .contains("Fo Under")
                    .contains("founder@studio.example")
                    .doesNotContain(PASSWORD);
        }
    }

    @Test
    void makesTheFirstLeadFromTheSettingsAndTellsNoLink(CapturedOutput output) {
        try (ConfigurableApplicationContext studio =
                start("--stancebook.admin.email=Founder@studio.example", "--stancebook.admin.password=" + PASSWORD)) {
            browser(studio).signIn("founder@studio.example", PASSWORD);

            assertThat(output.getOut()).doesNotContain("/setup").doesNotContain(PASSWORD);
        }
    }

    @Test
    void looksAtTheSettingsNoMoreOnceThereIsSomebody(CapturedOutput output) {
        start("--stancebook.admin.email=founder@studio.example", "--stancebook.admin.password=" + PASSWORD)
                .close();

        try (ConfigurableApplicationContext studio =
                start("--stancebook.admin.email=other@studio.example", "--stancebook.admin.password=" + PASSWORD)) {
            assertThat(browser(studio)
                            .trySigningIn("other@studio.example", PASSWORD)
                            .statusCode())
                    .isEqualTo(403);
            browser(studio).signIn("founder@studio.example", PASSWORD);
            assertThat(output.getOut()).doesNotContain("/setup");
        }
    }

    @Test
    void doesNotStartWithSettingsThatMakeNoLead() {
        assertThatThrownBy(() -> start("--stancebook.admin.email=founder@studio.example"))
                .hasMessageContaining("STANCEBOOK_ADMIN_PASSWORD");
        assertThatThrownBy(() -> start(
                        "--stancebook.admin.email=founder@studio.example", "--stancebook.admin.password=qwerty123456"))
                .hasMessageContaining("most common")
                .hasMessageNotContaining("qwerty123456");
    }

    @Test
    void opensTheDemoStudioToOnePersonOfEachRole(CapturedOutput output) throws IOException {
        Path file = data.resolve("people.txt");
        List<String> passwords = new ArrayList<>();
        try (ConfigurableApplicationContext studio = start("--spring.profiles.active=demo")) {
            for (Role role : Role.values()) {
                String password = found(output, role.key() + "@marshlane\\.example\\s+(\\S+)");
                passwords.add(password);
                browser(studio).signIn(role.key() + "@marshlane.example", password);
            }
            assertThat(passwords).doesNotHaveDuplicates();
            assertThat(output.getOut()).contains(address(studio).replace("localhost", "127.0.0.1"));
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
        }

        try (ConfigurableApplicationContext studio = start("--spring.profiles.active=demo")) {
            browser(studio).signIn("lead@marshlane.example", passwords.get(0));
            assertThat(count(output.getOut(), passwords.get(0))).isEqualTo(2);
        }

        Files.delete(file);
        start("--spring.profiles.active=demo").close();
        assertThat(count(output.getOut(), passwords.get(0))).isEqualTo(2);
        assertThat(output.getOut()).contains("to begin anew");
    }

    private ConfigurableApplicationContext start(String... arguments) {
        List<String> all = new ArrayList<>(List.of(
                "--server.port=0",
                "--stancebook.data=" + data,
                "--spring.datasource.url=" + database,
                "--spring.datasource.hikari.maximum-pool-size=3",
                "--stancebook.passwords.bcrypt-strength=4",
                "--spring.main.banner-mode=off"));
        all.addAll(List.of(arguments));
        return new SpringApplicationBuilder(Stancebook.class).run(all.toArray(String[]::new));
    }

    private static HttpResponse<String> submit(StudioBrowser browser, String link, String password) {
        return browser.submit(
                link,
                "/setup",
                Map.of(
                        "key",
                        key(link),
                        "email",
                        "founder@studio.example",
                        "displayName",
                        "Fo Under",
                        "password",
                        password,
                        "again",
                        password));
    }

    private static String key(String link) {
        return link.substring(link.indexOf('=') + 1);
    }

    private static StudioBrowser browser(ConfigurableApplicationContext studio) {
        return new StudioBrowser(address(studio));
    }

    private static String address(ConfigurableApplicationContext studio) {
        return "http://localhost:" + studio.getEnvironment().getProperty("local.server.port");
    }

    /** The last match of a pattern in what was printed: its group, or all of it. */
    private static String found(CapturedOutput output, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(output.getOut());
        String last = null;
        while (matcher.find()) {
            last = matcher.group(matcher.groupCount());
        }
        assertThat(last).as("nothing like %s on the console", pattern).isNotNull();
        return last;
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }
}
