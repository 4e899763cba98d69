/**
 * The two pictures that carry the tool, each in a package of its own: the side view and the band strip. Coordinates are computed
 * in plain records; a third package renders them.
 *
 * <p>Vocabulary: a <em>sheet</em> is one picture in mm, x to the right, y downwards (so y = -z); its <em>layers</em> lie
 * over each other in order; a <em>stroke</em> is a path, a <em>disc</em> a circle, a <em>text line</em> a line of words.
 * <em>Tape</em> is a recorded line, <em>drawn in</em> a line that only completes the picture. An <em>em</em> is the height of
 * the lettering of a sheet, to which every line weight is tied.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "problem", "tyre", "geometry", "dimension", "measure", "paper"})
package studio.stancebook.drawing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
