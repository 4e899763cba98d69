package studio.stancebook.operations.start;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.CannotStart;

/** Tells trouble with the database that shows only after it was opened. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class StoreAnalyzer extends AbstractFailureAnalyzer<SQLException> {

    private final Environment environment;

    StoreAnalyzer(Environment environment) {
        this.environment = environment;
    }

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable failure, SQLException cause) {
        String url = environment.getProperty("spring.datasource.url", "");
        return StoreTrouble.of(failure)
                .map(trouble -> StartWords.about(trouble, url))
                .map(refusal -> analysis(refusal, failure))
                .orElse(null);
    }

    private static FailureAnalysis analysis(CannotStart refusal, Throwable failure) {
        return new FailureAnalysis(refusal.getMessage(), refusal.whatToDo(), failure);
    }
}
