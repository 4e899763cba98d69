/**
 * The side view: a vehicle drawn to scale from its dimension set, alone or laid over others. What is drawn where; how it is
 * written is another room's.
 */
@NamedInterface("side-view")
@NullMarked
package studio.stancebook.drawing.sideview;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
