package studio.stancebook.account.session;

import java.time.Duration;
import java.util.List;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import studio.stancebook.access.SignedIn;

/** Makes sessions look as they would some time from now. */
public final class AgedSessions<S extends Session> {

    private static final String CONTEXT = HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY;

    private final FindByIndexNameSessionRepository<S> sessions;

    private AgedSessions(FindByIndexNameSessionRepository<S> sessions) {
        this.sessions = sessions;
    }

    public static <S extends Session> AgedSessions<S> of(FindByIndexNameSessionRepository<S> sessions) {
        return new AgedSessions<>(sessions);
    }

    /** Moves the moment of signing in, and of the last proof, back for all sessions of a person. */
    public void age(SignedIn person, Duration by) {
        sessions.findByPrincipalName(person.toString()).values().forEach(session -> {
            SignInMark mark = session.getRequiredAttribute(SignInMark.ATTRIBUTE);
            session.setAttribute(
                    SignInMark.ATTRIBUTE,
                    new SignInMark(mark.machine(), mark.at().minus(by), mark.overTls()));
            SecurityContext context = session.getRequiredAttribute(CONTEXT);
            session.setAttribute(CONTEXT, new SecurityContextImpl(aged(context.getAuthentication(), by)));
            sessions.save(session);
        });
    }

    private static Authentication aged(Authentication authentication, Duration by) {
        List<GrantedAuthority> authorities = authentication.getAuthorities().stream()
                .map(authority -> authority instanceof FactorGrantedAuthority factor ? aged(factor, by) : authority)
                .toList();
        return UsernamePasswordAuthenticationToken.authenticated(authentication.getPrincipal(), null, authorities);
    }

    private static GrantedAuthority aged(FactorGrantedAuthority factor, Duration by) {
        return FactorGrantedAuthority.withAuthority(factor.getAuthority())
                .issuedAt(factor.getIssuedAt().minus(by))
                .build();
    }
}
