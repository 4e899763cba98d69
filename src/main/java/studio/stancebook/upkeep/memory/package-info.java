/** Whether there is memory left to work with. */
@NullMarked
package studio.stancebook.upkeep.memory;

import org.jspecify.annotations.NullMarked;
