package studio.stancebook.catalogue;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.internal.PackageReading;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.reshaping.TypicalPackage;

/** What is typical of the class of a segment, as something to start from. */
@Component
public class TypicalPackages {

    /** Of a larger class, every second, third, ... package is read, so that about as many are. */
    public static final int MOST_READ = 200;

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
        int packages = classes.of(segment).packages();
        int step = Math.max(1, (packages + MOST_READ - 1) / MOST_READ);
        List<DimensionSet> sets = reading.dimensionsIn(segment, step, MOST_READ);
        return TypicalPackage.of(sets);
    }
}
