package studio.stancebook.exchange.web;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.mapping.RowProblem;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.ProblemType;

/**
 * That nothing was brought in because rows were refused: a problem as RFC 9457 has it, with the report as its extension.
 *
 * @param errors the first errors
 * @param errorCount how many there are
 * @param report its {@code accepted} is 0, since no row was
 */
record RefusedImport(
        String type,
        String title,
        int status,
        String detail,
        List<FieldError> errors,
        int errorCount,
        @JsonUnwrapped ReportAnswer report) {

    static RefusedImport of(ImportReport report) {
        ProblemType type = ProblemType.IMPOSSIBLE;
        ReportAnswer all = ReportAnswer.of(report);
        return new RefusedImport(
                "/problems/" + type.slug(),
                type.title(),
                type.status(),
                "Nothing was brought in: " + report.rejected() + " of " + report.rows()
                        + " rows are refused. Mend them, or send partial=true to bring in the others.",
                report.problems().stream()
                        .filter(RowProblem::error)
                        .limit(ErrorList.MOST_LISTED)
                        .map(RefusedImport::error)
                        .toList(),
                report.errors(),
                new ReportAnswer(
                        all.rows(),
                        0,
                        all.rejected(),
                        0,
                        all.unchanged(),
                        0,
                        0,
                        all.newSegments(),
                        all.missingSegments(),
                        all.problems(),
                        all.problemsNotListed(),
                        all.changes(),
                        all.changesNotListed()));
    }

    private static FieldError error(RowProblem problem) {
        String where = "row " + problem.row() + (problem.column().isEmpty() ? "" : ", " + problem.column());
        return new FieldError(where, problem.message());
    }
}
