package studio.stancebook.account.internal;

import java.time.Instant;
import studio.stancebook.access.SignedIn;

/**
 * What a secret turned out to be.
 *
 * @param owner as of now
 * @param expiresAt from when on it is refused
 * @param expired whether that is so already
 */
public record RecognisedToken(SignedIn owner, TokenScope scope, Instant expiresAt, boolean expired) {}
