/**
 * What to change so that a side view comes inside its bands: for one measure, each single move back to the edge.
 *
 * <p>Vocabulary: a <em>single move</em> is the change of one recorded value, all others held, that brings a measure to the
 * edge of its band; it is <em>carried</em> when the rest of the side view follows it. Bands come in as intervals of measures; this module knows neither who set them nor who asks.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"problem", "quantity", "geometry", "dimension", "dimension :: reshaping", "measure"})
package studio.stancebook.moves;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
