/**
 * Drawings on paper: lines and words in mm from the upper left corner of the paper, written as SVG, PDF and PNG.
 *
 * <p>Vocabulary: a <em>vector page</em> is one drawing on one sheet of paper; its <em>groups</em> say what the marks in them
 * are to a reader who does not see them; a <em>mark</em> is a <em>trace</em> (a path in an ink) or a <em>writing</em> (a
 * line of text).
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "problem"})
package studio.stancebook.paper;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
