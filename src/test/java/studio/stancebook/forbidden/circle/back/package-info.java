/** One half of a circle. */
@NullMarked
package studio.stancebook.forbidden.circle.back;

import org.jspecify.annotations.NullMarked;
