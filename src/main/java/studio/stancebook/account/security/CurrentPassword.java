package studio.stancebook.account.security;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.SignInEvents;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.TooMany;

/** Asks somebody who is signed in for their password once more, within the same limits as at sign-in. */
@Component
public class CurrentPassword {

    private final PersonService people;
    private final SignInAttempts attempts;
    private final SignInEvents signInEvents;

    CurrentPassword(PersonService people, SignInAttempts attempts, SignInEvents signInEvents) {
        this.people = people;
        this.attempts = attempts;
        this.signInEvents = signInEvents;
    }

    /**
     * Returns if the password is right; a wrong one is recorded.
     *
     * @param field to which the refusal is tied
     * @param address where the request came from
     * @throws Impossible if the password is wrong
     * @throws TooMany if it is not looked at, after too many wrong ones here or at sign-in
     */
    public void check(SignedIn who, String field, @Nullable String typed, String address) {
        SignInAttempts.Attempt attempt = attempts.begin(who.email(), address);
        if (!people.isPasswordOf(who.personId(), typed)) {
            signInEvents.passwordRefused(who, address);
            throw Impossible.ofField(field, "This is not your current password.");
        }
        attempts.succeeded(attempt);
    }
}
