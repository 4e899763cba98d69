/** Pages and API calls for the bands of a segment. */
@NullMarked
package studio.stancebook.band.web;

import org.jspecify.annotations.NullMarked;
