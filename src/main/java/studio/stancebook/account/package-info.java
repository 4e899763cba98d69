/**
 * People of the studio, their roles, how they sign in, and the tokens with which programs act for them.
 *
 * <p>Vocabulary: a <em>person</em> has one <em>role</em>; the <em>signed-in</em> person is who a request acts for; a
 * <em>token</em> is a secret for programs, shown once, with the rights of its owner.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"access", "activity", "problem", "edge"})
package studio.stancebook.account;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
