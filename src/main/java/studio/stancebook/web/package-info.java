/** The shell around all modules: what every page and every answer has in common. Nothing depends on it. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "quantity",
            "problem",
            "edge",
            "geometry",
            "dimension",
            "dimension :: form",
            "measure",
            "drawing",
            "drawing :: rendering",
            "drawing :: side-view",
            "drawing :: strip",
            "catalogue",
            "proposal",
            "operations"
        })
package studio.stancebook.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
