/**
 * Who asks and what they may do: the signed-in person and the role that they have.
 *
 * <p>Vocabulary: every person has exactly one <em>role</em>; whoever a request acts for is <em>signed in</em>, by page or by
 * token.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package studio.stancebook.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
