package studio.stancebook.operations.start;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import studio.stancebook.problem.CannotStart;

/** Tells a start that was refused in its own words. */
class CannotStartAnalyzer extends AbstractFailureAnalyzer<CannotStart> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, CannotStart cause) {
        return new FailureAnalysis(cause.getMessage(), cause.whatToDo(), cause);
    }
}
