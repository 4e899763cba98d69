package studio.stancebook.exchange.web;

import java.util.List;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.mapping.RowProblem;

/**
 * The answer to an import.
 *
 * @param imported packages that were written
 * @param problemsNotListed how many problems there are beside the listed ones
 */
record ReportAnswer(
        int rows,
        int accepted,
        int rejected,
        int queries,
        int imported,
        List<String> newSegments,
        List<ProblemAnswer> problems,
        int problemsNotListed) {

    /**
     * One problem.
     *
     * @param row as a person counts, the heading being row 1; in JSON the first package is 1
     * @param severity {@code error}: the row stays out; {@code query}: it comes in, with an open query
     */
    record ProblemAnswer(long row, String column, String value, String message, String severity) {

        static ProblemAnswer of(RowProblem problem) {
            return new ProblemAnswer(
                    problem.row(),
                    problem.column(),
                    problem.value(),
                    problem.message(),
                    problem.severity().key());
        }
    }

    static ReportAnswer of(ImportReport report) {
        return new ReportAnswer(
                report.rows(),
                report.accepted(),
                report.rejected(),
                report.queries(),
                report.imported(),
                report.newSegments(),
                report.problems().stream().map(ProblemAnswer::of).toList(),
                report.problemsNotListed());
    }
}
