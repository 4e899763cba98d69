/** The style guide: every fragment in every state, to look at and to test. */
@NullMarked
package studio.stancebook.web.styleguide;

import org.jspecify.annotations.NullMarked;
