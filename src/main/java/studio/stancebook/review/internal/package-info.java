/** Keeping and checking the lines of the activity record. */
@NullMarked
package studio.stancebook.review.internal;

import org.jspecify.annotations.NullMarked;
