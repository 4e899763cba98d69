/**
 * What is recorded of one side view: dimensions, landmarks and polylines with origin and uncertainty, what can be
 * derived from them, and the checks that refuse a typing error.
 *
 * <p>Vocabulary: a <em>dimension</em> is one recorded scalar; a <em>landmark</em> a point of the side view; a
 * <em>variable</em> one number that results depend on; a <em>reading</em> a length or angle taken from the set, recorded
 * or derived; an <em>estimate</em> a value with its first-order sensitivities.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "problem", "tyre", "geometry", "statistics"})
package studio.stancebook.dimension;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
