/** How bands are computed from a class, put into words and kept. */
@NullMarked
package studio.stancebook.band.internal;

import org.jspecify.annotations.NullMarked;
