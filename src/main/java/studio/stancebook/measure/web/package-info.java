/** Calls and pages of the list of measures. */
@NullMarked
package studio.stancebook.measure.web;

import org.jspecify.annotations.NullMarked;
