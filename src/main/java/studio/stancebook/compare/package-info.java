/**
 * Packages and proposals held against each other: laid over each other in one drawing, and their differences told by how
 * unusual they are. Nothing is kept; the address of a comparison is all of it.
 *
 * <p>Vocabulary: a <em>pick</em> names a package, or a proposal with or without a revision, in an address; the
 * <em>reference</em> is the one that the others are held against; a difference is so many <em>spreads</em> when it is that
 * many times the robust spread of the reference's class.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "quantity",
            "problem",
            "statistics",
            "dimension",
            "measure",
            "classes",
            "drawing :: rendering",
            "drawing :: side-view",
            "catalogue",
            "proposal"
        })
package studio.stancebook.compare;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
