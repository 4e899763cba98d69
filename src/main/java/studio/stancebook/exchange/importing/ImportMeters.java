package studio.stancebook.exchange.importing;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Counts imports and their rows for whoever watches the server; dry runs are not among them. */
@Component
class ImportMeters {

    private final Timer written;
    private final Timer refused;
    private final Timer failed;
    private final Counter rowsIn;
    private final Counter rowsOut;

    ImportMeters(MeterRegistry meters) {
        written = imports(meters, "written");
        refused = imports(meters, "refused");
        failed = imports(meters, "failed");
        rowsIn = rows(meters, "written");
        rowsOut = rows(meters, "refused");
    }

    private static Timer imports(MeterRegistry meters, String outcome) {
        return Timer.builder("stancebook.imports")
                .description("Imports of packages: written, refused because of their rows, or failed as a whole")
                .tag("outcome", outcome)
                .register(meters);
    }

    private static Counter rows(MeterRegistry meters, String outcome) {
        return Counter.builder("stancebook.import.rows")
                .description("Rows of imports that came in, and that were refused")
                .tag("outcome", outcome)
                .register(meters);
    }

    /** Runs an import and counts what comes of it. */
    ImportReport count(Supplier<ImportReport> run) {
        Timer.Sample sample = Timer.start();
        Timer outcome = failed;
        try {
            ImportReport report = run.get();
            outcome = report.imported() > 0 ? written : refused;
            rowsIn.increment(report.imported());
            rowsOut.increment(report.rejected());
            return report;
        } finally {
            sample.stop(outcome);
        }
    }
}
