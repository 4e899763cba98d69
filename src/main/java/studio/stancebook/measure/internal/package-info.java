/** The studio's own ratios as they are kept. */
@NullMarked
package studio.stancebook.measure.internal;

import org.jspecify.annotations.NullMarked;
