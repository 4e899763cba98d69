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
import studio.stancebook.access.Permission;
import studio.stancebook.account.internal.TokenScope;

/**
 * The rule that somebody who may not contribute changes nothing but their own account, and a token that may only read
 * nothing at all: it holds for every call there will ever be, beneath the finer rules that each call has of its own.
 */
final class ReadOnly {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

    /** Requests that may change something. */
    static final RequestMatcher WRITES = request -> !READING.contains(request.getMethod());

    /** They store nothing: calculations, and the choice of units, which is kept in a cookie. */
    private static final RequestMatcher STORING_NOTHING = new OrRequestMatcher(List.of(
            pathPattern("/api/v1/geometry/**"), pathPattern("/api/v1/proposals/*/moves"), pathPattern("/units")));

    private static final RequestMatcher OWN_ACCOUNT =
            new OrRequestMatcher(List.of(pathPattern("/account/**"), pathPattern("/api/v1/tokens/**")));

    private ReadOnly() {}

    static AuthorizationDecision decide(
            Supplier<? extends @Nullable Authentication> who, RequestAuthorizationContext what) {
        Authentication authentication = who.get();
        return new AuthorizationDecision(Permitted.person(authentication).isPresent()
                && (STORING_NOTHING.matches(what.getRequest()) || mayWrite(authentication, what)));
    }

    /** Whether somebody came by a token that may only read. */
    static boolean byReadToken(@Nullable Authentication authentication) {
        return authentication != null
                && authentication.getAuthorities().stream()
                        .map(GrantedAuthority::getAuthority)
                        .anyMatch(TokenScope.READ.authority()::equals);
    }

    private static boolean mayWrite(@Nullable Authentication authentication, RequestAuthorizationContext what) {
        return !byReadToken(authentication)
                && (Permitted.may(authentication, Permission.CONTRIBUTE) || OWN_ACCOUNT.matches(what.getRequest()));
    }
}
