package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.core.AuthenticationException;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.Credentials;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.SignInEvents;
import studio.stancebook.account.passkey.PasskeyCeremonies;
import studio.stancebook.account.passkey.PasskeyRefused;
import studio.stancebook.account.passkey.ShownPasskey;

/**
 * Recognises a person by a passkey, in the form field {@value #FIELD}.
 *
 * <p>There is nothing to guess in a signature, so a passkey of nobody's is refused and no more; one of somebody's that is
 * refused counts and is recorded as a wrong password of theirs is.
 */
@Component
public class PasskeySignIn {

    static final String FIELD = "credential";

    private final PasskeyCeremonies ceremonies;
    private final PersonService people;
    private final SignInAttempts attempts;
    private final SignInEvents signInEvents;

    PasskeySignIn(
            PasskeyCeremonies ceremonies, PersonService people, SignInAttempts attempts, SignInEvents signInEvents) {
        this.ceremonies = ceremonies;
        this.people = people;
        this.attempts = attempts;
        this.signInEvents = signInEvents;
    }

    /**
     * Who has shown a passkey with a request: somebody who may sign in.
     *
     * @throws AuthenticationException if it proves nobody
     */
    public SignedIn prove(HttpServletRequest request, HttpServletResponse response) {
        ShownPasskey passkey = ceremonies.read(request.getParameter(FIELD));
        SignedIn claimed = passkey.claimed();
        if (claimed == null) {
            throw new PasskeyRefused("This passkey is nobody's here.");
        }
        String address = request.getRemoteAddr();
        SignInAttempts.Attempt attempt = attempts.beginSignIn(claimed.email(), address);
        try {
            SignedIn proven = active(ceremonies.prove(passkey, request, response));
            attempts.succeeded(attempt);
            return proven;
        } catch (PasskeyRefused refused) {
            signInEvents.refused(claimed.email(), address);
            throw refused;
        }
    }

    private SignedIn active(String email) {
        return people.credentialsOf(email)
                .filter(Credentials::active)
                .map(Credentials::signedIn)
                .orElseThrow(() -> new PasskeyRefused("Its owner may not sign in."));
    }
}
