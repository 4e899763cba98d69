package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.SignInEvents;
import studio.stancebook.account.passkey.PasskeyRefused;

/** Lets somebody who is signed in prove once more who they are. */
@Component
public class Confirmation {

    private final CurrentPassword passwords;
    private final PasskeySignIn passkeys;
    private final SignInRenewal renewal;
    private final SignInEvents signInEvents;

    Confirmation(CurrentPassword passwords, PasskeySignIn passkeys, SignInRenewal renewal, SignInEvents signInEvents) {
        this.passwords = passwords;
        this.passkeys = passkeys;
        this.renewal = renewal;
        this.signInEvents = signInEvents;
    }

    /**
     * Takes their password, in the field {@code password}.
     *
     * @throws studio.stancebook.problem.Impossible if it is wrong
     * @throws studio.stancebook.problem.TooMany if it is not looked at, after too many wrong ones
     */
    public void byPassword(
            SignedIn who, @Nullable String password, HttpServletRequest request, HttpServletResponse response) {
        passwords.check(who, "password", password, request.getRemoteAddr());
        confirm(who, FactorGrantedAuthority.PASSWORD_AUTHORITY, request, response);
    }

    /**
     * Takes one of their passkeys, as signing in does.
     *
     * @throws org.springframework.security.core.AuthenticationException if it is not accepted, or somebody else's
     */
    public void byPasskey(SignedIn who, HttpServletRequest request, HttpServletResponse response) {
        if (passkeys.prove(request, response).personId() != who.personId()) {
            throw new PasskeyRefused("This passkey is somebody else's.");
        }
        confirm(who, FactorGrantedAuthority.WEBAUTHN_AUTHORITY, request, response);
    }

    private void confirm(SignedIn who, String factor, HttpServletRequest request, HttpServletResponse response) {
        signInEvents.confirmed(who, request.getRemoteAddr());
        renewal.renew(who, factor, request, response);
    }
}
