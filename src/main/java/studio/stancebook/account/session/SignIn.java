package studio.stancebook.account.session;

import java.time.Instant;

/**
 * One place where a person is signed in.
 *
 * @param key names it among the person's own, and cannot be used to get in
 * @param machine browser and system, such as {@code Firefox, Linux}; empty if they are not known
 * @param since when the person signed in there
 * @param lastSeen when a request last came from there, to the minute
 * @param here whether the request that asks comes from there
 */
public record SignIn(String key, String machine, Instant since, Instant lastSeen, boolean here) {}
