/**
 * The registry of measures: every proportion that is computed, each defined once with its formula, its unit and what it
 * needs. Pages, statistics, import, drawings and the HTTP interface read only this registry.
 *
 * <p>Vocabulary: a <em>measure</em> is a proportion or angle; a <em>subject</em> the side view it is computed for; a
 * <em>studio ratio</em> a measure that a studio adds, a sum of readings over a sum of readings.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"access", "activity", "quantity", "problem", "tyre", "geometry", "dimension"})
package studio.stancebook.measure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
