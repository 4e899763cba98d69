/** Taking the catalogue out as CSV, workbook or JSON, so that bringing it in again changes nothing. */
@NullMarked
package studio.stancebook.exchange.exporting;

import org.jspecify.annotations.NullMarked;
