/** Files as tables: told apart by their content, read row by row in bounded memory, refused in words. */
@NullMarked
package studio.stancebook.exchange.table;

import org.jspecify.annotations.NullMarked;
