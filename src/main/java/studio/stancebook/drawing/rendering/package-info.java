/**
 * Writes side views and strips: as SVG in a page or a file, as marks on paper for PDF and PNG, and cached as fragments of
 * pages.
 */
@NamedInterface("rendering")
@NullMarked
package studio.stancebook.drawing.rendering;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
