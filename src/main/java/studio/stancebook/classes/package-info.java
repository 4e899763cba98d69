/**
 * The class of each segment as columns of measure values in memory, with its state and its summaries.
 *
 * <p>Vocabulary: the <em>class</em> of a segment is its packages that are not set aside; its <em>revision</em> counts its
 * changes; a <em>snapshot</em> is the class at one revision. Who changes a package says so to {@code ClassRevisions}, and who
 * only adds some hands them over to {@code ClassSnapshots}; snapshots that are too old go, and this module knows no page.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"problem", "geometry", "tyre", "statistics", "dimension", "measure"})
package studio.stancebook.classes;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
