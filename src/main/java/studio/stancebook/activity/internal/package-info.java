/** Keeping and checking the lines of the activity record. */
@NullMarked
package studio.stancebook.activity.internal;

import org.jspecify.annotations.NullMarked;
