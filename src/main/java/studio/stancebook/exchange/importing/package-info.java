/** Bringing packages in: checking a whole file first, writing it in one transaction, and reporting row by row. */
@NullMarked
package studio.stancebook.exchange.importing;

import org.jspecify.annotations.NullMarked;
