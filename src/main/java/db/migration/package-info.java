/** Migrations that SQL cannot express, beside the scripts of the same place; never edited after they land. */
@NullMarked
package db.migration;

import org.jspecify.annotations.NullMarked;
