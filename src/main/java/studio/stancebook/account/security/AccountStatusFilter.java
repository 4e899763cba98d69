package studio.stancebook.account.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.Credentials;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.session.SignIns;

/**
 * Looks a signed-in person up again at every request, so that a change of role, a deactivation or a new password takes
 * effect at once and not only when the session ends; ends a session that has lasted as long as one may; and leads whoever
 * has to choose a password to where they do.
 */
final class AccountStatusFilter extends OncePerRequestFilter {

    private final PersonService people;
    private final SignIns signIns;

    AccountStatusFilter(PersonService people, SignIns signIns) {
        this.people = people;
        this.signIns = signIns;
    }

    /** What everybody may see needs no look at the session. */
    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getServletPath();
        return path.startsWith("/assets/") || path.startsWith("/webjars/");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication != null && authentication.getPrincipal() instanceof SignedIn who) {
            Optional<Credentials> now =
                    people.credentialsOf(who.personId()).filter(credentials -> isWelcome(credentials, authentication));
            if (now.isEmpty() || signIns.isOver(request)) {
                end(request.getSession(false));
            } else if (now.get().passwordChangeDue() && PasswordChangeRedirect.leads(request, response)) {
                return;
            } else if (!now.get().signedIn().equals(who)) {
                continueAs(now.get().signedIn(), authentication);
            }
        }
        chain.doFilter(request, response);
    }

    private static boolean isWelcome(Credentials credentials, Authentication authentication) {
        return credentials.active() && !credentials.passwordChangedAt().isAfter(signedInAt(authentication));
    }

    /** When the password was given; long ago if it never was. */
    private static Instant signedInAt(Authentication authentication) {
        return authentication.getAuthorities().stream()
                .filter(FactorGrantedAuthority.class::isInstance)
                .map(authority -> ((FactorGrantedAuthority) authority).getIssuedAt())
                .findFirst()
                .orElse(Instant.EPOCH);
    }

    private static void end(@Nullable HttpSession session) {
        if (session != null) {
            session.invalidate();
        }
        SecurityContextHolder.clearContext();
    }

    private static void continueAs(SignedIn who, Authentication before) {
        SecurityContextHolder.setContext(SignInRenewal.context(who, before.getAuthorities()));
    }
}
