package studio.stancebook.classes.layout;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioMeasures;

/** The layout of the studio's present measures. */
@Component
public class CurrentLayout {

    private final StudioMeasures measures;
    private volatile @Nullable CachedLayout held;

    private record CachedLayout(MeasureRegistry registry, ValueLayout layout) {}

    CurrentLayout(StudioMeasures measures) {
        this.measures = measures;
    }

    /** The layout now. */
    public ValueLayout get() {
        MeasureRegistry registry = measures.current();
        CachedLayout known = held;
        if (known == null || known.registry() != registry) {
            known = new CachedLayout(registry, sameIfEqual(known, ValueLayout.of(registry)));
            held = known;
        }
        return known.layout();
    }

    private static ValueLayout sameIfEqual(@Nullable CachedLayout known, ValueLayout next) {
        return known != null && known.layout().fingerprint().equals(next.fingerprint()) ? known.layout() : next;
    }
}
