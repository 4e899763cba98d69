/**
 * What people in the studio do and decide together: for now the activity record.
 *
 * <p>Vocabulary: the <em>activity record</em> is a list of <em>lines</em>, one for each {@link
 * studio.stancebook.account.Deed} that was committed: who did what to which thing when, and what it changed from what to
 * what. Each line holds the hash of the line before, so that the lines are a <em>chain</em>; the <em>head</em> is the number
 * and hash of the last one.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"problem", "account", "limit"})
package studio.stancebook.review;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
