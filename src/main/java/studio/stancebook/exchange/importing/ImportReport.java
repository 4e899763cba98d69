package studio.stancebook.exchange.importing;

import java.util.List;
import studio.stancebook.exchange.mapping.RowProblem;

/**
 * What came of a file.
 *
 * @param rows rows below the heading that are not blank
 * @param accepted rows that can come in
 * @param rejected rows that cannot
 * @param errors what is wrong with them
 * @param queries questions about the rows that can
 * @param imported packages that were written; 0 after a dry run and after a refusal
 * @param newSegments names of the segments that the file needs and that are, or were, not there
 * @param problems errors and queries in the order of the rows, not all of them if there are very many
 * @param problemsNotListed how many more there are
 */
public record ImportReport(
        int rows,
        int accepted,
        int rejected,
        int errors,
        int queries,
        int imported,
        List<String> newSegments,
        List<RowProblem> problems,
        int problemsNotListed) {

    public ImportReport {
        newSegments = List.copyOf(newSegments);
        problems = List.copyOf(problems);
    }

    ImportReport withImported(int written) {
        return new ImportReport(
                rows, accepted, rejected, errors, queries, written, newSegments, problems, problemsNotListed);
    }
}
