package studio.stancebook.account.session;

import java.io.Serializable;
import java.time.Instant;

/**
 * What a session keeps of how it began.
 *
 * @param machine the words for browser and system
 * @param at when the person signed in
 */
record SignInMark(String machine, Instant at) implements Serializable {

    static final String ATTRIBUTE = "signedInBy";
}
