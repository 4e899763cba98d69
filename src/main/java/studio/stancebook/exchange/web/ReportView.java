package studio.stancebook.exchange.web;

import java.util.List;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.ImportStatus;
import studio.stancebook.exchange.mapping.RowProblem;

/**
 * What came of a run, for the page.
 *
 * @param state which of the sentences of the page says it: good, some, refused, nothing, same, done, stopped
 */
record ReportView(ImportReport report, String state, List<ChangeWords.ChangeLine> changes, List<RowProblem> problems) {

    static ReportView of(ImportStatus run, ImportReport report, ImportOptions options, ChangeWords words) {
        return new ReportView(
                report, state(run, report, options), words.lines(report.changes()), words.named(report.problems()));
    }

    private static String state(ImportStatus run, ImportReport report, ImportOptions options) {
        if (report.imported() > 0) {
            return "done";
        }
        if (report.accepted() == 0) {
            return report.rejected() == 0 && report.unchanged() > 0 ? "same" : "nothing";
        }
        if (report.rejected() > 0 && !options.partial()) {
            return run.dryRun() ? "refused" : "stopped";
        }
        return report.rejected() > 0 ? "some" : "good";
    }

    /** Whether the next step is to bring the rows in. */
    public boolean ready() {
        return state.equals("good") || state.equals("some");
    }

    /** Whether nothing can come in as it is. */
    public boolean bad() {
        return partialHelps() || state.equals("nothing");
    }

    /** Whether it would help to keep the good rows only. */
    public boolean partialHelps() {
        return state.equals("refused") || state.equals("stopped");
    }

    /** How many of the rows are new packages. */
    public int added() {
        return report.accepted() - report.updated();
    }

    /** Whether anything is said of packages that are there already. */
    public boolean aboutKnown() {
        return report.updated() + report.unchanged() > 0;
    }

    public boolean done() {
        return state.equals("done");
    }

    /** Whether there are more problems than are listed. */
    public boolean more() {
        return report.problemsNotListed() > 0;
    }
}
