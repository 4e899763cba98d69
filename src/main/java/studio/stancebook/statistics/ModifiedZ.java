package studio.stancebook.statistics;

import java.util.OptionalDouble;

/**
 * Screening of values by the modified z-score: z = 0.6745 (x - median) / MAD of a class, MAD being its raw median
 * absolute deviation. Above 3.5 in magnitude a value is a query for a person; nothing is dropped by it.
 *
 * <p>MAD = 0, where more than half of the class is equal: the mean absolute deviation from the median stands in, z = (x -
 * median) / (1.253314 x mean deviation). All values equal: there is no score, and any other value is a query. Fewer than
 * {@value ClassSize#COMPUTED_FROM} values: no score and no query.
 *
 * <p>Source: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, ASQC Basic References in Quality Control
 * 16 (1993); 0.6745 is the upper quartile of the standard normal distribution, rounded as there.
 */
public final class ModifiedZ {

    /** The constant before (x - median) / MAD. */
    public static final double FACTOR = 0.6745;

    /** A score beyond this, on either side, makes a query. */
    public static final double CUT_OFF = 3.5;

    private final SpreadKind scale;
    private final double median;
    private final double spread;

    private ModifiedZ(SpreadKind scale, double median, double spread) {
        this.scale = scale;
        this.median = median;
        this.spread = spread;
    }

    /** What a score is measured by. */
    public enum SpreadKind {
        /** The median absolute deviation of the class. */
        MEDIAN_DEVIATION,
        /** The mean absolute deviation, because the median one is 0. */
        MEAN_DEVIATION,
        /** Nothing, because all values of the class are equal. */
        ALL_EQUAL,
        /** Nothing, because the class has too few values. */
        TOO_FEW
    }

    /**
     * One value seen against the class.
     *
     * @param value in the unit of the column
     * @param score signed, positive above the median; empty where the scale gives none
     * @param scale what the score is measured by
     * @param query true if a person should look
     */
    public record ScreenedValue(double value, OptionalDouble score, SpreadKind scale, boolean query) {}

    /** The screen that a class makes, from its values with or without the one to be looked at. */
    public static ModifiedZ by(SortedColumn column) {
        if (ClassSize.of(column.n()) == ClassSize.TOO_SMALL) {
            return new ModifiedZ(SpreadKind.TOO_FEW, 0, 0);
        }
        double median = column.median();
        double medianDeviation = column.medianAbsoluteDeviation();
        if (medianDeviation > 0) {
            return new ModifiedZ(SpreadKind.MEDIAN_DEVIATION, median, medianDeviation / FACTOR);
        }
        double meanDeviation = column.meanAbsoluteDeviation();
        return meanDeviation > 0
                ? new ModifiedZ(SpreadKind.MEAN_DEVIATION, median, Spread.SD_PER_MEAN_DEVIATION * meanDeviation)
                : new ModifiedZ(SpreadKind.ALL_EQUAL, median, 0);
    }

    /**
     * Looks at one value.
     *
     * @throws IllegalArgumentException if {@code value} is NaN, infinite or beyond 1e100
     */
    public ScreenedValue screen(double value) {
        double accepted = AcceptedValues.accepted(value, "value");
        return switch (scale) {
            case TOO_FEW -> new ScreenedValue(accepted, OptionalDouble.empty(), scale, false);
            case ALL_EQUAL -> new ScreenedValue(accepted, OptionalDouble.empty(), scale, accepted != median);
            case MEDIAN_DEVIATION, MEAN_DEVIATION -> scored(accepted, (accepted - median) / spread);
        };
    }

    private ScreenedValue scored(double value, double score) {
        return new ScreenedValue(value, OptionalDouble.of(score), scale, isBeyondCutOff(score));
    }

    /** True above 3.5 and below -3.5, ends excluded. */
    static boolean isBeyondCutOff(double score) {
        return Math.abs(score) > CUT_OFF;
    }
}
