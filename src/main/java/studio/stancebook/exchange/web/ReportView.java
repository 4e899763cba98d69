package studio.stancebook.exchange.web;

import java.util.List;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.ImportStatus;
import studio.stancebook.exchange.mapping.RowProblem;

/**
 * What came of a run, for the page.
 *
 * @param state which of the sentences of the page says it: good, some, refused, nothing, done, stopped
 */
record ReportView(ImportReport report, String state) {

    static ReportView of(ImportStatus run, ImportReport report, ImportOptions options) {
        return new ReportView(report, state(run, report, options));
    }

    private static String state(ImportStatus run, ImportReport report, ImportOptions options) {
        if (report.imported() > 0) {
            return "done";
        }
        if (report.accepted() == 0) {
            return "nothing";
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

    public boolean done() {
        return state.equals("done");
    }

    public List<RowProblem> problems() {
        return report.problems();
    }

    /** Whether there are more problems than are listed. */
    public boolean more() {
        return report.problemsNotListed() > 0;
    }
}
