package studio.stancebook.account.security;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.SignInDeeds;
import studio.stancebook.account.internal.Staff;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.TooMany;

/** Asks somebody who is signed in for their password once more, within the same limits as at sign-in. */
@Component
public class CurrentPassword {

    private final Staff staff;
    private final Attempts attempts;
    private final SignInDeeds deeds;

    CurrentPassword(Staff staff, Attempts attempts, SignInDeeds deeds) {
        this.staff = staff;
        this.attempts = attempts;
        this.deeds = deeds;
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
        Attempts.Attempt attempt = attempts.begin(who.email(), address);
        if (!staff.isPasswordOf(who.personId(), typed)) {
            deeds.passwordRefused(who, address);
            throw Impossible.ofField(field, "This is not your current password.");
        }
        attempts.succeeded(attempt);
    }
}
