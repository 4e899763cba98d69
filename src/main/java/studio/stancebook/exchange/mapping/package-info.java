/** What the columns of a table hold, and rows read by it: cells to dimension sets, with every problem named. */
@NullMarked
package studio.stancebook.exchange.mapping;

import org.jspecify.annotations.NullMarked;
