package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpHeaders;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Invented;

/** Signing in and out, and what did not get in, each leave their line. */
abstract class SignInEventsTest {

    private static final Pattern END = Pattern.compile("/account/sign-ins/[0-9a-f-]{36}/end");

    @Autowired
    StudioClients studio;

    @Autowired
    ActivityRecord activity;

    private SignedIn somebody() {
        return studio.add(Invented.key("comes") + "@studio.example", "Comes and goes", Role.DESIGNER);
    }

    private StudioBrowser signedIn(SignedIn person) {
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    /** The newest line first. */
    private List<ActivityLine> of(String subject) {
        return activity.list(new ActivityFilter(null, "sign-in", subject, null, null), PageRequest.of(0, 20))
                .getContent();
    }

    private List<ActivityLine> of(SignedIn person) {
        return of(String.valueOf(person.personId()));
    }

    @Test
    void tellWhoCameAndWent() {
        SignedIn person = somebody();
        signedIn(person).submit("/account", "/sign-out", Map.of());

        List<ActivityLine> lines = of(person);

        assertThat(lines).extracting(ActivityLine::action).containsExactly("ended", "begun");
        assertThat(lines).allSatisfy(line -> {
            assertThat(line.byId()).isEqualTo(person.personId());
            assertThat(line.title()).isEqualTo("Comes and goes");
        });
        assertThat(lines.get(1).changes()).contains(new FieldChange("address", null, "127.0.0.1"));
    }

    @Test
    void tellWhatDidNotGetIn() {
        SignedIn person = somebody();

        studio.browser().trySigningIn(person.email(), "not the password");

        ActivityLine line = of(person).get(0);
        assertThat(line.action()).isEqualTo("refused");
        assertThat(line.by()).isEqualTo("nobody signed in");
        assertThat(line.byId()).isNull();
        assertThat(line.toString()).doesNotContain("not the password");
    }

    /** Some type their password where the address belongs. */
    @Test
    void neverHoldWhatWasTypedForAnAddressThatIsNobodys() {
        String typed = Invented.key("my-secret-password");

        studio.browser().trySigningIn(typed, typed);

        ActivityLine line = of("unknown").get(0);
        assertThat(line.action()).isEqualTo("refused");
        assertThat(line.toString()).doesNotContain(typed);
    }

    @Test
    void tellOfAPasswordThatMadeNoToken() {
        SignedIn person = somebody();
        String wrong = Base64.getEncoder().encodeToString((person.email() + ":not the password").getBytes());

        studio.anonymous()
                .post()
                .uri("/api/v1/tokens")
                .header(HttpHeaders.AUTHORIZATION, "Basic " + wrong)
                .exchange()
                .expectStatus()
                .isUnauthorized();

        assertThat(of(person)).extracting(ActivityLine::action).containsExactly("refused");
    }

    @Test
    void tellOfPlacesThatWereClosedFromElsewhere() {
        SignedIn person = somebody();
        signedIn(person);
        StudioBrowser here = signedIn(person);
        Matcher end = END.matcher(here.get("/account").body());
        assertThat(end.find()).isTrue();

        here.submit("/account", end.group(), Map.of());
        here.submit("/account", "/account/sign-ins/end", Map.of());

        assertThat(of(person))
                .extracting(ActivityLine::action)
                .containsExactly("ended everywhere", "ended from elsewhere", "begun", "begun");
    }

    @Test
    void nameTheLeadWhoSignedSomebodyOut() {
        SignedIn person = somebody();
        signedIn(person);
        String page = "/studio/people/" + person.personId();

        studio.browser(Role.LEAD).submit(page, page + "/sign-out", Map.of());

        ActivityLine line = of(person).get(0);
        assertThat(line.action()).isEqualTo("ended everywhere");
        assertThat(line.byId()).isEqualTo(studio.person(Role.LEAD).personId());
    }
}
