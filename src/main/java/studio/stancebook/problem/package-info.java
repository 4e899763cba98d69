/**
 * What the server says when it refuses: the base of our exceptions and the kinds of problem (RFC 9457).
 *
 * <p>Vocabulary: a <em>refusal</em> is an exception whose message is written for the person who asked; a <em>field
 * error</em> names the field, the value and what is accepted.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package studio.stancebook.problem;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
