package studio.stancebook.account.security;

import org.springframework.security.core.AuthenticationException;
import studio.stancebook.problem.TooMany;

/** Somebody tried too many passwords; the next one is not even looked at. */
public class TooManyAttempts extends AuthenticationException {

    TooManyAttempts(TooMany refusal) {
        super(refusal.detail(), refusal);
    }
}
