package studio.stancebook.classes;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import org.springframework.stereotype.Component;

/** Tells whoever watches the server how many classes it keeps in memory, and how many packages are in them. */
@Component
class SnapshotMeters implements MeterBinder {

    private final ClassSnapshots snapshots;

    SnapshotMeters(ClassSnapshots snapshots) {
        this.snapshots = snapshots;
    }

    @Override
    public void bindTo(MeterRegistry meters) {
        Gauge.builder("stancebook.classes.kept", snapshots, kept -> kept.kept().size())
                .description("Classes of segments that are kept in memory")
                .register(meters);
        Gauge.builder("stancebook.classes.kept.packages", snapshots, SnapshotMeters::packages)
                .description("Packages in the classes that are kept in memory")
                .register(meters);
    }

    private static double packages(ClassSnapshots snapshots) {
        return snapshots.kept().stream().mapToLong(ClassSnapshot::packages).sum();
    }
}
