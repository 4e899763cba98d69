package studio.stancebook.account.security;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Objects;
import java.util.function.BiConsumer;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.savedrequest.RequestCache;
import studio.stancebook.access.SignedIn;
import studio.stancebook.edge.OwnAddress;

/**
 * Keeps a signed-in person's session for a working day without a request, so that a form left over lunch is not lost;
 * sessions of strangers stay as short as they are set to be. Then goes on to the page that was wanted.
 */
final class SignInSuccessHandler extends SavedRequestAwareAuthenticationSuccessHandler {

    static final Duration LENGTH = Duration.ofHours(8);

    private final BiConsumer<SignedIn, HttpServletRequest> begin;

    SignInSuccessHandler(RequestCache wantedPages, BiConsumer<SignedIn, HttpServletRequest> begin) {
        this.begin = begin;
        setRequestCache(wantedPages);
        setRedirectStrategy((request, response, url) -> response.sendRedirect(OwnAddress.of(url)));
    }

    @Override
    public void onAuthenticationSuccess(
            HttpServletRequest request, HttpServletResponse response, Authentication authentication)
            throws ServletException, IOException {
        request.getSession().setMaxInactiveInterval((int) LENGTH.toSeconds());
        begin(request, authentication);
        super.onAuthenticationSuccess(request, response, authentication);
    }

    /** What cannot be recorded does not begin. */
    private void begin(HttpServletRequest request, Authentication authentication) {
        try {
            begin.accept((SignedIn) Objects.requireNonNull(authentication.getPrincipal()), request);
        } catch (RuntimeException failure) {
            request.getSession().invalidate();
            SecurityContextHolder.clearContext();
            throw failure;
        }
    }
}
