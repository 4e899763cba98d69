package studio.stancebook.account.internal;

import org.jspecify.annotations.Nullable;

/**
 * What a person is to become, as typed: nothing here has been checked.
 *
 * @param role the key of a role
 */
public record PersonChange(
        @Nullable String displayName,
        @Nullable String role,
        @Nullable Boolean active) {}
