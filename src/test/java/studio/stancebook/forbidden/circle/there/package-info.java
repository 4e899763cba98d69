/** One half of a circle. */
@NullMarked
package studio.stancebook.forbidden.circle.there;

import org.jspecify.annotations.NullMarked;
