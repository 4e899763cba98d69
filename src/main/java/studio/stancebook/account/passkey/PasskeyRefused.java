package studio.stancebook.account.passkey;

import org.springframework.security.core.AuthenticationException;

/** A passkey that does not let anybody in. */
public class PasskeyRefused extends AuthenticationException {

    public PasskeyRefused(String why) {
        super(why);
    }

    PasskeyRefused(String why, Throwable cause) {
        super(why, cause);
    }
}
