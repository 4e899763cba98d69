package studio.stancebook.account;

import studio.stancebook.access.Role;

/**
 * A person as other parts of the studio mention them.
 *
 * @param active whether the person can still sign in
 */
public record PersonName(long id, String name, Role role, boolean active) {}
