package studio.stancebook.account.web;

import org.jspecify.annotations.Nullable;

/**
 * The form that makes the first lead, as typed.
 *
 * @param key of the link on the console
 * @param password once
 * @param again the same once more, since nobody could help whoever mistyped it
 */
record SetupForm(
        @Nullable String key,
        @Nullable String email,
        @Nullable String displayName,
        @Nullable String password,
        @Nullable String again) {

    static SetupForm empty(@Nullable String key) {
        return new SetupForm(key, "", "", "", "");
    }

    /** Leaves out key and passwords. */
    @Override
    public String toString() {
        return "SetupForm[" + email + "]";
    }
}
