/**
 * A side view changed as a whole: what hangs on a dimension or a landmark follows it, so that a set that closed before
 * closes afterwards, and a line goes on running through its landmarks.
 *
 * <p>Vocabulary: a <em>stretch</em> moves coordinates along one axis, in pieces; what <em>gives way</em> is the length
 * that takes up a change of another one.
 */
@NullMarked
@NamedInterface("reshaping")
package studio.stancebook.dimension.reshaping;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
