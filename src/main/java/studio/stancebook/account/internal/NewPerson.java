package studio.stancebook.account.internal;

import org.jspecify.annotations.Nullable;

/**
 * A person to be added, as typed: nothing here has been checked.
 *
 * @param role the key of a role
 */
public record NewPerson(
        @Nullable String email,
        @Nullable String displayName,
        @Nullable String role,
        @Nullable String password) {

    /** Leaves out the password. */
    @Override
    public String toString() {
        return "NewPerson[" + email + ", " + role + "]";
    }
}
