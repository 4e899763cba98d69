package studio.stancebook.account.session;

import java.io.Serializable;
import java.time.Instant;

/**
 * What a session keeps of how it began.
 *
 * @param machine the words for browser and system
 * @param at when the person signed in
 * @param overTls whether that came over TLS
 */
record SignInMark(String machine, Instant at, boolean overTls) implements Serializable {

    static final String ATTRIBUTE = "signedInBy";
}
