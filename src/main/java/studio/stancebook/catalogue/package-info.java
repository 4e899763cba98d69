/**
 * Segments and the benchmark packages in each: recording them, the questions that they raise, setting them aside, and the
 * class of a segment as columns of measure values.
 *
 * <p>Vocabulary: a <em>segment</em> is a kind of vehicle that a studio works in; a <em>benchmark package</em> is one
 * vehicle with its dimensions; the <em>class</em> of a segment is its packages that are not set aside; its
 * <em>revision</em> counts its changes; a <em>query</em> is a question about a package that a person has to settle.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "activity",
            "quantity",
            "problem",
            "tyre",
            "geometry",
            "statistics",
            "dimension",
            "dimension :: form",
            "measure",
            "drawing :: rendering",
            "drawing :: side-view"
        })
package studio.stancebook.catalogue;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
