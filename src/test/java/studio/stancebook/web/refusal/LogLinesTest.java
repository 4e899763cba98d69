package studio.stancebook.web.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** Source: OWASP ASVS 5.0.0, 16.3.2 (what is not allowed is logged) and 16.4.1 (nothing that was sent passes for an event). */
@StudioTest
@ExtendWith(OutputCaptureExtension.class)
class LogLinesTest {

    private static final String FORGED = "2026-01-01T00:00:00.000Z  INFO 1 --- [main] [] a.Forger : person 1 was here";

    @Autowired
    private StudioClients studio;

    @Test
    void beginWithATimeOnlyWhereAnEventBegins(CapturedOutput output) {
        LoggerFactory.getLogger("words that were sent")
                .warn("one\r\n{}", FORGED, new IllegalStateException("two\n" + FORGED + "\r" + FORGED));

        List<String> forged = output.getOut()
                .lines()
                .filter(line -> line.contains("a.Forger"))
                .toList();
        assertThat(forged).hasSize(3).allMatch(line -> line.startsWith("    2026"));
        assertThat(output.getOut().lines())
                .filteredOn(line -> line.contains("words that were sent"))
                .singleElement()
                .asString()
                .matches("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]{12}(Z|[+-][0-9:]{5}).* WARN .*: one");
    }

    @Test
    void tellWhoWasNotAllowedWhatOnAPage(CapturedOutput output) {
        studio.browser(Role.VIEWER).get("/studio/people");

        assertThat(output.getOut())
                .contains("GET /studio/people is not allowed to person "
                        + studio.person(Role.VIEWER).personId());
    }

    @Test
    void tellWhoWasNotAllowedWhatByAProgram(CapturedOutput output) {
        studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1/people")
                .exchange()
                .expectStatus()
                .isForbidden();

        assertThat(output.getOut())
                .contains("GET /api/v1/people is not allowed to person "
                        + studio.person(Role.DESIGNER).personId());
    }

    @Test
    void tellNothingOfStrangersWithoutTheMarkOfAForm(CapturedOutput output) {
        StudioBrowser stranger = studio.browser();

        studio.anonymous().post().uri("/sign-in").exchange().expectStatus().isForbidden();
        assertThat(stranger.get("/studio/people").statusCode()).isEqualTo(302);
        assertThat(output.getOut()).doesNotContain("is not allowed to");
    }
}
