package studio.stancebook.catalogue;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.internal.PackageReading;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.reshaping.TypicalPackage;

/** What is typical of the class of a segment, as something to start from. */
@Component
public class TypicalPackages {

    /** Of a larger class, every second, third, ... package is read, so that about as many are. */
    public static final int MOST_READ = 200;

    /** What is kept with a class. */
    private enum CachedPart {
        TYPICAL
    }

    private final PackageReading reading;
    private final ClassSnapshots classes;

    TypicalPackages(PackageReading reading, ClassSnapshots classes) {
        this.reading = reading;
        this.classes = classes;
    }

    /**
     * Empty where the class has no package with a front tyre.
     *
     * @throws studio.stancebook.classes.UnknownSegment if there is no such segment
     */
    public Optional<TypicalPackage> of(String segment) {
        ClassSnapshot whole = classes.of(segment);
        return whole.derived(CachedPart.TYPICAL, () -> TypicalPackage.of(read(whole)));
    }

    private List<DimensionSet> read(ClassSnapshot whole) {
        int step = Math.max(1, (whole.packages() + MOST_READ - 1) / MOST_READ);
        return reading.dimensionsIn(whole.segment(), step, MOST_READ);
    }
}
