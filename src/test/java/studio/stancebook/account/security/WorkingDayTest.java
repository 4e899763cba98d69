package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
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

        new WorkingDay(new HttpSessionRequestCache())
                .onAuthenticationSuccess(request, response, new TestingAuthenticationToken("somebody", null));

        assertThat(session.getMaxInactiveInterval()).isEqualTo(8 * 60 * 60);
        assertThat(response.getRedirectedUrl()).isEqualTo("/");
    }
}
