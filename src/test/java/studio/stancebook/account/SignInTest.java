package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** Signing in and out by the form. */
abstract class SignInTest {

    @Autowired
    StudioClients studio;

    @Autowired
    JdbcClient jdbc;

    @Test
    void letsInWithTheRightPasswordHoweverTheAddressIsCapitalised() {
        String email = studio.person(Role.DESIGNER).email();

        HttpResponse<String> answer =
                studio.browser().trySigningIn(email.toUpperCase(java.util.Locale.ROOT), StudioClients.PASSWORD);

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).doesNotContain("sign-in"));
    }

    @Test
    void refusesAWrongPasswordAndKeepsTheAddressTyped() {
        String email = studio.person(Role.DESIGNER).email();

        HttpResponse<String> answer = studio.browser().trySigningIn(email, "not the password");

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("No account here matches").contains("value=\"" + email + "\"");
    }

    @Test
    void saysTheSameOfAnUnknownAddress() {
        HttpResponse<String> answer = studio.browser().trySigningIn("nobody@studio.example", "not the password");

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("No account here matches");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\u0000", "'; drop table person; --", "\ud83d\ude97\ud83d\ude97"})
    void answersGarbageWithARefusalAndNotAnError(String garbage) {
        HttpResponse<String> answer = studio.browser().trySigningIn(garbage, garbage.repeat(40));

        assertThat(answer.statusCode()).isBetween(400, 403);
    }

    @Test
    void refusesAFormWithoutItsToken() {
        String email = studio.person(Role.DESIGNER).email();

        HttpResponse<String> answer =
                studio.browser().post("/sign-in", Map.of("email", email, "password", StudioClients.PASSWORD));

        assertThat(answer.statusCode()).isEqualTo(403);
    }

    @Test
    void changesTheSessionWhenSomebodySignsIn() {
        String email = studio.person(Role.DESIGNER).email();
        StudioBrowser browser = studio.browser();
        browser.signIn(email, StudioClients.PASSWORD);
        String before = browser.cookie("session");

        browser.submit("/account", "/sign-in", Map.of("email", email, "password", StudioClients.PASSWORD));

        assertThat(before).isNotEmpty();
        assertThat(browser.cookie("session")).isNotEmpty().isNotEqualTo(before);
    }

    @Test
    void keepsNoSessionForStrangers() {
        StudioBrowser browser = studio.browser();
        long before = sessions();

        browser.get("/sign-in");
        browser.get("/proposals?page=2");
        browser.get("/problems/not-found");
        browser.trySigningIn("nobody@studio.example", "not the password");

        assertThat(sessions()).isEqualTo(before);
        assertThat(browser.cookie("session")).isEmpty();
    }

    @Test
    void takesNoSessionThatSomebodyElseMadeUp() {
        StudioBrowser browser = studio.browser();
        String madeUp = "YTE3ZTQ3NGEtMDAwMC00MDAwLTgwMDAtMDAwMDAwMDAwMDAx";
        browser.keep("session", madeUp);

        HttpResponse<String> answer =
                browser.trySigningIn(studio.person(Role.DESIGNER).email(), StudioClients.PASSWORD);

        assertThat(answer.headers().allValues("Set-Cookie"))
                .anyMatch(cookie -> cookie.startsWith("session=") && !cookie.contains(madeUp));
    }

    private long sessions() {
        return jdbc.sql("SELECT count(*) FROM spring_session").query(Long.class).single();
    }

    @Test
    void goesOnToThePageThatWasWanted() {
        StudioBrowser browser = studio.browser();
        HttpResponse<String> closed = browser.get("/somewhere?page=2");
        HttpResponse<String> answer =
                browser.trySigningIn(studio.person(Role.DESIGNER).email(), StudioClients.PASSWORD);

        assertThat(closed.statusCode()).isEqualTo(302);
        assertThat(closed.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/sign-in"));
        assertThat(answer.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/somewhere?page=2"));
    }
}
