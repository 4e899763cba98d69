/** For {@code ModulesTest}: two packages of one module that use each other, which the build would refuse in the program. */
@NullMarked
package studio.stancebook.forbidden.circle;

import org.jspecify.annotations.NullMarked;
