package studio.stancebook.account.internal;

import java.time.Instant;
import studio.stancebook.access.Role;

/**
 * A person as the list of people shows them.
 *
 * @param passwordChangeDue whether the person still has a password that somebody else set
 * @param version counts the changes, for {@code If-Match}
 */
public record PersonEntry(
        long id,
        String email,
        String displayName,
        Role role,
        boolean active,
        boolean passwordChangeDue,
        long version,
        Instant createdAt) {}
