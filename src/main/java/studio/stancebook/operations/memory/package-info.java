/** Whether there is memory left to work with. */
@NullMarked
package studio.stancebook.operations.memory;

import org.jspecify.annotations.NullMarked;
