/**
 * Numbers and how they are written: intervals, rounding and text that does not depend on a locale.
 *
 * <p>Vocabulary: an <em>interval</em> is closed; units are carried by names ({@code Mm}, {@code Deg}), never by types.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package studio.stancebook.quantity;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
