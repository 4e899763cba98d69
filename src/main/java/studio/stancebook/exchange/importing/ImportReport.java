package studio.stancebook.exchange.importing;

import java.util.List;
import studio.stancebook.exchange.mapping.RowProblem;

/**
 * What came of a file.
 *
 * @param rows rows below the heading that are not blank
 * @param accepted rows that can come in, those included that change a package
 * @param rejected rows that cannot
 * @param updated rows of the accepted ones that change a package that is there
 * @param unchanged rows that say what is recorded already; neither accepted nor rejected
 * @param errors what is wrong with the rejected rows
 * @param queries questions about the accepted ones
 * @param imported packages that were written; 0 after a dry run and after a refusal
 * @param newSegments names of the segments that the file needs and that are, or were, not there
 * @param missingSegments the words by which the file names segments that were not there, at most 200
 * @param problems errors and queries in the order of the rows, not all of them if there are very many
 * @param problemsNotListed how many more there are
 * @param changes what the updated rows change, not all of it if there is very much
 * @param changesNotListed how many more rows change something
 * @param state the same for two checks that would change the same packages from the same versions
 */
public record ImportReport(
        int rows,
        int accepted,
        int rejected,
        int updated,
        int unchanged,
        int errors,
        int queries,
        int imported,
        List<String> newSegments,
        List<String> missingSegments,
        List<RowProblem> problems,
        int problemsNotListed,
        List<RowChange> changes,
        int changesNotListed,
        String state) {

    public ImportReport {
        newSegments = List.copyOf(newSegments);
        missingSegments = List.copyOf(missingSegments);
        problems = List.copyOf(problems);
        changes = List.copyOf(changes);
    }

    ImportReport withImported(int written) {
        return new ImportReport(
                rows,
                accepted,
                rejected,
                updated,
                unchanged,
                errors,
                queries,
                written,
                newSegments,
                missingSegments,
                problems,
                problemsNotListed,
                changes,
                changesNotListed,
                state);
    }
}
