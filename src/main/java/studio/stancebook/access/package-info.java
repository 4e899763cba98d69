/**
 * Who asks and what they may do: the signed-in person, the role that they have, and the permissions that come with it.
 *
 * <p>Vocabulary: every person has exactly one <em>role</em>; whoever a request acts for is <em>signed in</em>, by page or by
 * token; a <em>permission</em> is something that roles are allowed, for the things of everybody or for what they own; an
 * <em>owner scope</em> is whose things a permission reaches, for one person.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package studio.stancebook.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
