package studio.stancebook.proposal.internal;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Verdict;

/** Counts the verdicts that were given, by kind, for whoever watches the server. */
@Component
class VerdictCount {

    private final Map<Verdict.VerdictKind, Counter> counters = new EnumMap<>(Verdict.VerdictKind.class);

    VerdictCount(MeterRegistry meters) {
        for (Verdict.VerdictKind kind : Verdict.VerdictKind.values()) {
            counters.put(
                    kind,
                    Counter.builder("stancebook.verdicts")
                            .description("Verdicts on a measure of a proposal")
                            .tag("kind", kind.key())
                            .register(meters));
        }
    }

    /** Counts an assessment and gives it back. */
    Assessment of(Assessment assessment) {
        assessment
                .findings()
                .forEach(finding ->
                        Objects.requireNonNull(counters.get(finding.kind())).increment());
        return assessment;
    }
}
