/**
 * Tyre sizes: what a size designation says, and the diameters that follow from it.
 *
 * <p>Vocabulary: a <em>designation</em> is the text on the sidewall; <em>metric</em> designations give section width
 * (mm), aspect ratio (percent) and rim code ({@code 265/70R17}), <em>flotation</em> designations give the diameter and
 * the width in inches ({@code 35x12.50R17LT}); the <em>overall diameter</em> is the design diameter by the rule of the
 * standards, or the nominal one of a flotation size; the <em>section height</em> is the height of one sidewall. Lengths
 * are millimetres.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "problem"})
package studio.stancebook.tyre;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
