package studio.stancebook.account.security;

import org.springframework.security.core.AuthenticationException;
import studio.stancebook.problem.TooMany;

/** Somebody tried too many passwords; the next one is not even looked at. */
public class TooManyAttempts extends AuthenticationException {

    private final transient TooMany refusal;

    TooManyAttempts(TooMany refusal) {
        super(refusal.detail(), refusal);
        this.refusal = refusal;
    }

    /** The same as a refusal. */
    public TooMany refusal() {
        return refusal;
    }
}
