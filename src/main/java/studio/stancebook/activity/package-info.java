/**
 * What happened in the studio: events in the past tense, the activity record of them, its hash chain, export and verification.
 *
 * <p>Vocabulary: whoever changes something publishes an {@link studio.stancebook.activity.ActivityEvent} in the same
 * transaction; the <em>activity record</em> is a list of <em>lines</em>, one for each event that was committed: who did what to
 * which thing when, and what it changed from what to what. Each line holds the hash of the line before, so that the lines are a
 * <em>chain</em>; the <em>head</em> is the number and hash of the last one.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"access", "problem", "limit"})
package studio.stancebook.activity;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
