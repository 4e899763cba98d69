package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.web.savedrequest.HttpSessionRequestCache;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

class SignInSuccessHandlerTest {

    private static final SignedIn ADA = new SignedIn(7, "Ada Test", "ada@studio.example", Role.VIEWER);

    @Test
    void keepsTheSessionForEightHours() throws Exception {
        MockHttpSession session = new MockHttpSession();
        session.setMaxInactiveInterval(60);
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/sign-in");
        request.setSession(session);
        MockHttpServletResponse response = new MockHttpServletResponse();

        new SignInSuccessHandler(new HttpSessionRequestCache(), (who, begun) -> begun.setAttribute("begun", who))
                .onAuthenticationSuccess(request, response, new TestingAuthenticationToken(ADA, null));

        assertThat(request.getAttribute("begun")).isEqualTo(ADA);
        assertThat(session.getMaxInactiveInterval()).isEqualTo(8 * 60 * 60);
        assertThat(response.getRedirectedUrl()).isEqualTo("/");
    }

    @Test
    void doesNotBeginWhereTheSignInCannotBeRecorded() {
        MockHttpSession session = new MockHttpSession();
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/sign-in");
        request.setSession(session);
        SignInSuccessHandler day = new SignInSuccessHandler(new HttpSessionRequestCache(), (who, begun) -> {
            throw new IllegalStateException("no room");
        });

        assertThatThrownBy(() -> day.onAuthenticationSuccess(
                        request, new MockHttpServletResponse(), new TestingAuthenticationToken(ADA, null)))
                .hasMessage("no room");

        assertThat(session.isInvalid()).isTrue();
    }
}
