package studio.stancebook.exchange.web;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.RowChange;
import studio.stancebook.exchange.importing.ValueChange;
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
        int updated,
        int unchanged,
        int queries,
        int imported,
        List<String> newSegments,
        List<String> missingSegments,
        List<ProblemAnswer> problems,
        int problemsNotListed,
        List<ChangeAnswer> changes,
        int changesNotListed) {

    /** What a row changes, or would change, of a package that is there. */
    record ChangeAnswer(long row, @JsonProperty("package") long packageId, String name, List<ValueChange> values) {

        static ChangeAnswer of(RowChange change) {
            return new ChangeAnswer(change.row(), change.packageId(), change.title(), change.values());
        }
    }

    /**
     * One problem.
     *
     * @param row as a person counts, the heading being row 1; in JSON the first package is 1
     * @param name of the vehicle; empty where the row has none
     * @param severity {@code error}: the row stays out; {@code query}: it comes in, with an open query
     */
    record ProblemAnswer(long row, String name, String column, String value, String message, String severity) {

        static ProblemAnswer of(RowProblem problem) {
            return new ProblemAnswer(
                    problem.row(),
                    problem.vehicle(),
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
                report.updated(),
                report.unchanged(),
                report.queries(),
                report.imported(),
                report.newSegments(),
                report.missingSegments(),
                report.problems().stream().map(ProblemAnswer::of).toList(),
                report.problemsNotListed(),
                report.changes().stream().map(ChangeAnswer::of).toList(),
                report.changesNotListed());
    }
}
