/** Pages and calls of the activity record. */
@NullMarked
package studio.stancebook.activity.web;

import org.jspecify.annotations.NullMarked;
