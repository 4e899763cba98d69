package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import studio.stancebook.account.Role;
import studio.stancebook.account.SignedIn;

/**
 * The rule that a viewer changes nothing: it holds for every call there will ever be, beneath the finer rules that each
 * call has of its own.
 */
final class ViewersReadOnly {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

    /** Requests that may change something. */
    static final RequestMatcher WRITES = request -> !READING.contains(request.getMethod());

    /** What a viewer may still send: signing out, their own account and tokens, and calculations that store nothing. */
    private static final RequestMatcher OPEN = new OrRequestMatcher(List.of(
            pathPattern("/account/**"),
            pathPattern("/api/v1/tokens/**"),
            pathPattern("/api/v1/geometry/**"),
            pathPattern("/api/v1/proposals/*/moves")));

    private ViewersReadOnly() {}

    static AuthorizationDecision decide(
            Supplier<? extends @Nullable Authentication> who, RequestAuthorizationContext what) {
        Authentication authentication = who.get();
        return new AuthorizationDecision(
                isSignedIn(authentication) && (!isViewer(authentication) || OPEN.matches(what.getRequest())));
    }

    private static boolean isSignedIn(@Nullable Authentication authentication) {
        return authentication != null
                && authentication.isAuthenticated()
                && authentication.getPrincipal() instanceof SignedIn;
    }

    private static boolean isViewer(@Nullable Authentication authentication) {
        return authentication == null
                || authentication.getAuthorities().stream()
                        .map(GrantedAuthority::getAuthority)
                        .anyMatch(Role.VIEWER.authority()::equals);
    }
}
