package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.web.authentication.AbstractAuthenticationProcessingFilter;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.authentication.session.SessionAuthenticationStrategy;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import studio.stancebook.access.SignedIn;

/** The form that signs in with a passkey, beside the one for passwords and with the same session and the same ways on. */
final class PasskeyForm extends AbstractHttpConfigurer<PasskeyForm, HttpSecurity> {

    static final String PATH = "/sign-in/passkey";

    private final PasskeySignIn byPasskey;
    private final AuthenticationSuccessHandler success;
    private final AuthenticationFailureHandler failure;

    PasskeyForm(PasskeySignIn byPasskey, AuthenticationSuccessHandler success, AuthenticationFailureHandler failure) {
        this.byPasskey = byPasskey;
        this.success = success;
        this.failure = failure;
    }

    @Override
    public void configure(HttpSecurity http) {
        Filter filter = new Filter(byPasskey);
        filter.setSecurityContextRepository(new HttpSessionSecurityContextRepository());
        filter.setSessionAuthenticationStrategy(http.getSharedObject(SessionAuthenticationStrategy.class));
        filter.setAuthenticationSuccessHandler(success);
        filter.setAuthenticationFailureHandler(failure);
        http.addFilterAfter(filter, UsernamePasswordAuthenticationFilter.class);
    }

    private static final class Filter extends AbstractAuthenticationProcessingFilter {

        private final PasskeySignIn byPasskey;

        Filter(PasskeySignIn byPasskey) {
            super(pathPattern(HttpMethod.POST, PATH));
            this.byPasskey = byPasskey;
        }

        /** The same kind of authentication as by password, so that all that follows is the same. */
        @Override
        public Authentication attemptAuthentication(HttpServletRequest request, HttpServletResponse response) {
            SignedIn who = byPasskey.prove(request, response);
            GrantedAuthority proof = FactorGrantedAuthority.fromAuthority(FactorGrantedAuthority.WEBAUTHN_AUTHORITY);
            return UsernamePasswordAuthenticationToken.authenticated(who, null, List.of(proof));
        }
    }
}
