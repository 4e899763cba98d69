package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;

/** Keeps a person signed in who has just proved anew who they are, or chosen a password, with which their other sign-ins end. */
@Component
public class SignInRenewal {

    private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();
    private final Clock clock;

    SignInRenewal(Clock clock) {
        this.clock = clock;
    }

    /**
     * Signs a person in anew, as of now and under another session id; how long the session may last does not change.
     *
     * @param factor what proved who it is, a name of {@link FactorGrantedAuthority}
     */
    public void renew(SignedIn who, String factor, HttpServletRequest request, HttpServletResponse response) {
        GrantedAuthority proof = FactorGrantedAuthority.withAuthority(factor)
                .issuedAt(clock.instant())
                .build();
        request.changeSessionId();
        SecurityContext context = context(who, List.of(proof));
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
    }

    static SecurityContext context(SignedIn who, Collection<? extends GrantedAuthority> authorities) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(who, null, authorities));
        return context;
    }
}
