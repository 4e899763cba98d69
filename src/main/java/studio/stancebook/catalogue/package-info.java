/**
 * Segments and the benchmark packages in each: recording them, finding them, the questions that they raise, and setting
 * them aside.
 *
 * <p>Vocabulary: a <em>segment</em> is a kind of vehicle that a studio works in; a <em>benchmark package</em> is one
 * vehicle with its dimensions; a <em>query</em> is a question about a package that a person has to settle.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "activity",
            "account",
            "quantity",
            "problem",
            "tyre",
            "geometry",
            "statistics",
            "dimension",
            "dimension :: form",
            "dimension :: reshaping",
            "measure",
            "classes",
            "classes :: layout",
            "drawing :: rendering",
            "drawing :: side-view"
        })
package studio.stancebook.catalogue;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
