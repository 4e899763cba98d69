/**
 * Proposals: what a studio wants to build, revision by revision, each judged against the bands of its segment at that
 * moment.
 *
 * <p>Vocabulary: a <em>proposal</em> has an <em>owner</em>, a <em>stage</em> and <em>revisions</em>; a revision is one
 * dimension set with the <em>assessment</em> that was made of it and is never changed; <em>today's</em> assessment is
 * what the bands of now would say of the same dimensions.
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
            "moves",
            "drawing",
            "drawing :: rendering",
            "drawing :: side-view",
            "drawing :: strip",
            "paper",
            "catalogue",
            "band"
        })
package studio.stancebook.proposal;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
