package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.SignInDeeds;

/** Lets somebody who is signed in prove once more who they are. */
@Component
public class Confirmation {

    private final PasswordSignIn passwords;
    private final Renewal renewal;
    private final SignInDeeds deeds;

    Confirmation(PasswordSignIn passwords, Renewal renewal, SignInDeeds deeds) {
        this.passwords = passwords;
        this.renewal = renewal;
        this.deeds = deeds;
    }

    /**
     * Takes a password as signing in does, with the same limit and the same line for a wrong one.
     *
     * @throws org.springframework.security.core.AuthenticationException if it is not the person's, or too many were tried
     */
    public void byPassword(SignedIn who, String password, HttpServletRequest request, HttpServletResponse response) {
        UsernamePasswordAuthenticationToken claim =
                UsernamePasswordAuthenticationToken.unauthenticated(who.email(), password);
        claim.setDetails(new WebAuthenticationDetails(request));
        passwords.authenticate(claim);
        deeds.confirmed(who, request.getRemoteAddr());
        renewal.renew(who, request, response);
    }
}
