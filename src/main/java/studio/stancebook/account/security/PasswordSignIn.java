package studio.stancebook.account.security;

import org.springframework.security.authentication.AccountStatusUserDetailsChecker;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PasswordRules;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.SignInEvents;

/**
 * Recognises a person by address and password: the only way in by password, for pages and for the API.
 *
 * <p>An unknown address costs as much hashing as a wrong password, and whether a person is active is looked at only after the
 * password was right, so that neither can be probed.
 */
@Component
class PasswordSignIn extends DaoAuthenticationProvider {

    /** Has a control character, so it is nobody's. */
    private static final String NOBODYS_PASSWORD = "\0";

    private final SignInAttempts attempts;
    private final SignInEvents signInEvents;

    PasswordSignIn(
            PersonService people, PasswordEncoder passwords, SignInAttempts attempts, SignInEvents signInEvents) {
        super(new PersonLookup(people));
        this.attempts = attempts;
        this.signInEvents = signInEvents;
        setPasswordEncoder(passwords);
        setUserDetailsPasswordService(new PersonLookup(people));
        setPreAuthenticationChecks(person -> {});
        setPostAuthenticationChecks(new AccountStatusUserDetailsChecker());
    }

    @Override
    public Authentication authenticate(Authentication claim) {
        String email = claim.getName();
        if (email.length() > PersonService.LONGEST_EMAIL) {
            throw refused();
        }
        SignInAttempts.Attempt attempt = attempts.beginSignIn(email, address(claim));
        try {
            Authentication proven = super.authenticate(withPossiblePassword(claim));
            attempts.succeeded(attempt);
            return proven;
        } catch (AuthenticationException reason) {
            signInEvents.refused(email, address(claim));
            throw refused();
        }
    }

    private static BadCredentialsException refused() {
        return new BadCredentialsException("No account here matches this e-mail address and password.");
    }

    /** A password that nobody can have, however long, is hashed as a short one that nobody has. */
    private static Authentication withPossiblePassword(Authentication claim) {
        if (claim.getCredentials() instanceof String password
                && PasswordRules.objection(password).isEmpty()) {
            return claim;
        }
        UsernamePasswordAuthenticationToken other =
                UsernamePasswordAuthenticationToken.unauthenticated(claim.getName(), NOBODYS_PASSWORD);
        other.setDetails(claim.getDetails());
        return other;
    }

    /** The principal is a {@link SignedIn}, which holds no password and may be kept in a session. */
    @Override
    protected Authentication createSuccessAuthentication(
            Object principal, Authentication authentication, UserDetails user) {
        SignedIn signedIn = ((PersonDetails) user).credentials().signedIn();
        return super.createSuccessAuthentication(signedIn, authentication, user);
    }

    private static String address(Authentication claim) {
        return claim.getDetails() instanceof WebAuthenticationDetails details ? details.getRemoteAddress() : "unknown";
    }
}
