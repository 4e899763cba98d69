package studio.stancebook.account.internal;

/** A person was deactivated, and with that is signed in nowhere. */
public record AccessEnded(long personId) {}
