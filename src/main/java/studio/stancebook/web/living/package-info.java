/** The living page: every fragment in every state, to look at and to test. */
@NullMarked
package studio.stancebook.web.living;

import org.jspecify.annotations.NullMarked;
