/**
 * Underlays: construction sheets of a segment or a proposal, true to scale, to draw over.
 *
 * <p>Vocabulary: a <em>framework</em> is what the sheet is drawn from, its <em>proportions</em> made into mm by a tyre size
 * or a wheelbase; a <em>zone</em> is the part of the sheet that a band allows; the <em>paper</em> and the <em>scale</em>
 * say how large it is printed.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "quantity",
            "problem",
            "limit",
            "tyre",
            "statistics",
            "dimension",
            "measure",
            "classes",
            "drawing :: rendering",
            "drawing :: side-view",
            "paper",
            "catalogue",
            "band",
            "proposal"
        })
package studio.stancebook.underlay;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
