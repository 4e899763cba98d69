/**
 * Import of packages from tables and export of the catalogue: CSV, workbooks (XLSX) and JSON.
 *
 * <p>Vocabulary: a <em>table</em> is a heading and rows of cells, whatever file they come from; a <em>mapping</em> says
 * what each column holds; a <em>problem</em> is an error, which keeps its row out, or a query, which comes in with it
 * and stays open; an <em>upload</em> is a file kept while its owner decides what to do with it.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "access",
            "activity",
            "quantity",
            "problem",
            "limit",
            "tyre",
            "geometry",
            "dimension",
            "measure",
            "catalogue",
            "edge"
        })
package studio.stancebook.exchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
