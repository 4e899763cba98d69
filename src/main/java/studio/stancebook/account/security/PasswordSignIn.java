package studio.stancebook.account.security;

import org.springframework.security.authentication.AccountStatusUserDetailsChecker;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import studio.stancebook.account.SignedIn;

/**
 * Recognises a person by address and password.
 *
 * <p>An unknown address costs the same time as a wrong password, and whether a person is active is looked at only after
 * the password was right, so that neither can be probed.
 */
@Component
class PasswordSignIn extends DaoAuthenticationProvider {

    PasswordSignIn(PersonLookup people, PasswordEncoder passwords) {
        super(people);
        setPasswordEncoder(passwords);
        setUserDetailsPasswordService(people);
        setPreAuthenticationChecks(person -> {});
        setPostAuthenticationChecks(new AccountStatusUserDetailsChecker());
    }

    /** The principal is a {@link SignedIn}, which holds no password and may be kept in a session. */
    @Override
    protected Authentication createSuccessAuthentication(
            Object principal, Authentication authentication, UserDetails user) {
        SignedIn signedIn = ((PersonDetails) user).credentials().signedIn();
        return super.createSuccessAuthentication(signedIn, authentication, user);
    }
}
