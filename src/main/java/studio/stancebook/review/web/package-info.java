/** Pages and calls of the activity record. */
@NullMarked
package studio.stancebook.review.web;

import org.jspecify.annotations.NullMarked;
