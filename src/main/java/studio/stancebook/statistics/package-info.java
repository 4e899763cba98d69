/**
 * Statistics of one class column: location, spread, quantiles, screening and the edges of bands.
 *
 * <p>Vocabulary: a <em>column</em> is the measurable values of one measure over one class; a <em>rank</em> counts the
 * values from the smallest, which has rank 1; a <em>band</em> is a lower and an upper <em>edge</em>; an edge computed
 * from a column is an estimate and has an <em>interval</em>. Numbers come in as {@code double[]} in whatever unit the
 * measure has and go out in the same unit; NaN and infinities are refused at the door ({@link
 * studio.stancebook.statistics.SortedColumn}), so nothing behind it has to think of them.
 *
 * <p>Nothing here knows Spring, a database or a vehicle.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "problem"})
package studio.stancebook.statistics;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
