/**
 * A studio to try: an invented catalogue with bands and proposals, made at the first start under the profile {@code demo}.
 * No vehicle in it exists; the same seed gives the same studio on every machine.
 *
 * <p>Vocabulary: an <em>archetype</em> is what the vehicles of a class have in common; the <em>character</em> of a vehicle
 * runs from -1, tall and upright, to 1, low and fast, and ties its proportions together.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "activity",
            "account",
            "problem",
            "tyre",
            "geometry",
            "statistics",
            "dimension",
            "measure",
            "catalogue",
            "band",
            "proposal"
        })
package studio.stancebook.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
