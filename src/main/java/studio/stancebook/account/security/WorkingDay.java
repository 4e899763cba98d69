package studio.stancebook.account.security;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.savedrequest.RequestCache;

/**
 * Keeps a signed-in person's session for a working day without a request, so that a form left over lunch is not lost;
 * sessions of strangers stay as short as they are set to be. Then goes on to the page that was wanted.
 */
final class WorkingDay extends SavedRequestAwareAuthenticationSuccessHandler {

    static final Duration LENGTH = Duration.ofHours(8);

    WorkingDay(RequestCache wantedPages) {
        setRequestCache(wantedPages);
    }

    @Override
    public void onAuthenticationSuccess(
            HttpServletRequest request, HttpServletResponse response, Authentication authentication)
            throws ServletException, IOException {
        request.getSession().setMaxInactiveInterval((int) LENGTH.toSeconds());
        super.onAuthenticationSuccess(request, response, authentication);
    }
}
