package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.web.savedrequest.HttpSessionRequestCache;

class WorkingDayTest {

    @Test
    void keepsTheSessionForEightHours() throws Exception {
        MockHttpSession session = new MockHttpSession();
        session.setMaxInactiveInterval(60);
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/sign-in");
        request.setSession(session);
        MockHttpServletResponse response = new MockHttpServletResponse();

        new WorkingDay(new HttpSessionRequestCache(), mark -> mark.setAttribute("marked", true))
                .onAuthenticationSuccess(request, response, new TestingAuthenticationToken("somebody", null));

        assertThat(request.getAttribute("marked")).isEqualTo(true);
        assertThat(session.getMaxInactiveInterval()).isEqualTo(8 * 60 * 60);
        assertThat(response.getRedirectedUrl()).isEqualTo("/");
    }

    @ParameterizedTest
    @CsvSource({
        "http://studio.example/proposals?page=2, /proposals?page=2",
        "https://elsewhere.example/proposals, /proposals",
        "https://elsewhere.example//elsewhere.example/x, /",
        "//elsewhere.example, ''",
        "javascript:alert(1), /",
        "/packages/7, /packages/7"
    })
    void goesOnToPagesOfThisServerOnly(String wanted, String taken) {
        assertThat(WorkingDay.onThisServer(wanted)).isEqualTo(taken);
    }
}
