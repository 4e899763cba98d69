package studio.stancebook.account.internal;

import java.time.Instant;
import studio.stancebook.access.SignedIn;

/**
 * What it takes to recognise a person.
 *
 * @param signedIn who the person is once recognised
 * @param passwordHash the encoded password
 * @param passwordChangedAt sign-ins from before this moment are over
 * @param passwordChangeDue whether somebody else set the password, so that the person has to choose their own first
 * @param active whether the person may sign in at all
 */
public record Credentials(
        SignedIn signedIn, String passwordHash, Instant passwordChangedAt, boolean passwordChangeDue, boolean active) {

    static Credentials of(Person person) {
        return new Credentials(
                person.signedIn(),
                person.passwordHash(),
                person.passwordChangedAt(),
                person.passwordChangeDue(),
                person.active());
    }

    /** Leaves out the hash. */
    @Override
    public String toString() {
        return "Credentials[" + signedIn + "]";
    }
}
