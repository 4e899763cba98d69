package studio.stancebook.exchange.exporting;

import java.util.function.Function;
import studio.stancebook.catalogue.PackageView;

/**
 * One column of a table of packages.
 *
 * @param heading by which a mapping is guessed when the table is brought in
 * @param number true when its cells are numbers as {@code PlainNumber} writes them
 * @param always true when the column is there even if all its cells are empty
 * @param cell its cell of a package; empty where there is nothing
 */
record ExportColumn(String heading, boolean number, boolean always, Function<PackageView, String> cell) {}
