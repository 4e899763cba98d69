/**
 * Bands of a class and the verdicts that a side view gets against them.
 *
 * <p>Vocabulary: a <em>band</em> is the range of a measure that a studio holds to be right for a segment; setting it
 * makes a <em>version</em>, and the old versions stay; an <em>assessment</em> is the list of <em>findings</em>, one for
 * each measure, each with its <em>verdict</em>.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "activity",
            "quantity",
            "problem",
            "statistics",
            "dimension",
            "dimension :: reshaping",
            "measure",
            "tyre",
            "classes",
            "moves",
            "drawing :: rendering",
            "drawing :: side-view",
            "drawing :: strip",
            "catalogue"
        })
package studio.stancebook.band;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
