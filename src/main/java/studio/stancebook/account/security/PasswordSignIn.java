package studio.stancebook.account.security;

import org.springframework.security.authentication.AccountStatusUserDetailsChecker;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.SignInDeeds;

/**
 * Recognises a person by address and password.
 *
 * <p>An unknown address costs the same time as a wrong password, and whether a person is active is looked at only after
 * the password was right, so that neither can be probed.
 */
@Component
class PasswordSignIn extends DaoAuthenticationProvider {

    private final Attempts attempts;
    private final SignInDeeds deeds;

    PasswordSignIn(PersonLookup people, PasswordEncoder passwords, Attempts attempts, SignInDeeds deeds) {
        super(people);
        this.attempts = attempts;
        this.deeds = deeds;
        setPasswordEncoder(passwords);
        setUserDetailsPasswordService(people);
        setPreAuthenticationChecks(person -> {});
        setPostAuthenticationChecks(new AccountStatusUserDetailsChecker());
    }

    @Override
    public Authentication authenticate(Authentication claim) {
        String machine = machine(claim);
        attempts.check(claim.getName(), machine);
        try {
            Authentication proven = super.authenticate(claim);
            attempts.succeeded(claim.getName(), machine);
            return proven;
        } catch (AuthenticationException refused) {
            attempts.failed(claim.getName(), machine);
            deeds.refused(claim.getName(), machine);
            throw new BadCredentialsException("Address and password do not match anyone who may sign in here.");
        }
    }

    /** The principal is a {@link SignedIn}, which holds no password and may be kept in a session. */
    @Override
    protected Authentication createSuccessAuthentication(
            Object principal, Authentication authentication, UserDetails user) {
        SignedIn signedIn = ((PersonDetails) user).credentials().signedIn();
        return super.createSuccessAuthentication(signedIn, authentication, user);
    }

    private static String machine(Authentication claim) {
        return claim.getDetails() instanceof WebAuthenticationDetails details ? details.getRemoteAddress() : "unknown";
    }
}
