/** The band strip: one measure of a proposal against its class and its band, laid out in one row. */
@NamedInterface("strip")
@NullMarked
package studio.stancebook.drawing.strip;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
