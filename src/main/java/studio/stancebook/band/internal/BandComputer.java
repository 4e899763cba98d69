package studio.stancebook.band.internal;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.BandTrial;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.statistics.BandCalculator;
import studio.stancebook.statistics.BandEdges;
import studio.stancebook.statistics.BandOutcome;
import studio.stancebook.statistics.SortedColumn;

/** Finds out what a band would be on the class of a segment as it is now. */
@Component
public class BandComputer {

    private final ClassSnapshots classes;

    BandComputer(ClassSnapshots classes) {
        this.classes = classes;
    }

    /** @throws studio.stancebook.classes.UnknownSegment if there is no such segment */
    public BandTrial trial(String segment, String measure, BandSetting setting) {
        ClassSnapshot part = classes.of(segment, setting.filter());
        BandOutcome outcome = BandCalculator.compute(setting.method(), part.column(measure));
        SortedColumn whole = classes.of(segment).column(measure);
        return trial(outcome, BandWords.of(setting.method(), outcome), whole, part.revision());
    }

    private static BandTrial trial(BandOutcome outcome, String words, SortedColumn whole, long revision) {
        BandRange range = range(outcome);
        int below = range == null ? 0 : whole.countBelow(range.limits().lower());
        int above =
                range == null ? 0 : whole.n() - whole.countAtMost(range.limits().upper());
        return new BandTrial(range, words, whole.n(), below, above, revision);
    }

    private static @Nullable BandRange range(BandOutcome outcome) {
        return outcome instanceof BandEdges edges
                ? new BandRange(
                        edges.interval(),
                        edges.lowerInterval().orElse(null),
                        edges.upperInterval().orElse(null),
                        edges.n(),
                        edges.provisional())
                : null;
    }
}
