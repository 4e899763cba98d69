package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.InsufficientAuthenticationException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.web.filter.OncePerRequestFilter;
import studio.stancebook.access.SignedIn;
import studio.stancebook.edge.Admission;

/**
 * Refuses what strangers send before a byte of it is read, but for the few forms that are meant for them, if they are short.
 * To be placed before whatever reads a parameter, which the check of the form's token does.
 */
final class AnonymousBodyFilter extends OncePerRequestFilter {

    /** What is posted by people who have not signed in. */
    private static final RequestMatcher FOR_STRANGERS = new OrRequestMatcher(List.of(
            pathPattern(HttpMethod.POST, "/sign-in"),
            pathPattern(HttpMethod.POST, "/sign-in/passkey/**"),
            pathPattern(HttpMethod.POST, "/setup"),
            pathPattern(HttpMethod.POST, "/theme")));

    private final AuthenticationEntryPoint signIn;

    AnonymousBodyFilter(AuthenticationEntryPoint signIn) {
        this.signIn = signIn;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !Admission.hasBody(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isSignedIn()) {
            Admission.grant(request);
            chain.doFilter(request, response);
        } else if (!FOR_STRANGERS.matches(request) || isMultipart(request)) {
            response.setHeader(HttpHeaders.CONNECTION, "close");
            signIn.commence(request, response, new InsufficientAuthenticationException("a body before a sign-in"));
        } else if (!Admission.isShort(request)) {
            response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
        } else {
            chain.doFilter(request, response);
        }
    }

    private static boolean isSignedIn() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedIn;
    }

    /** Parts of such a body are kept on the disk, and none of the forms for strangers has any. */
    private static boolean isMultipart(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
    }
}
