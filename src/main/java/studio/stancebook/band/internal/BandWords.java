package studio.stancebook.band.internal;

import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.BandBasis;
import studio.stancebook.statistics.BandEdges;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.BandOutcome;
import studio.stancebook.statistics.NoBandPossible;

/** What a band rests on, in words. */
final class BandWords {

    private static final int DECIMALS = 4;

    private BandWords() {}

    static String of(BandMethod method, BandOutcome outcome) {
        return outcome instanceof BandEdges edges
                ? basis(method, edges.basis(), edges.n())
                : none(method, (NoBandPossible) outcome);
    }

    private static String basis(BandMethod method, BandBasis basis, int n) {
        if (basis instanceof BandBasis.FromQuantiles quantiles && method instanceof BandMethod.Percentile percentile) {
            return percent(percentile.lowerQuantile()) + " to " + percent(percentile.upperQuantile())
                    + " quantile (type " + quantiles.type().number() + ") of " + values(n) + ".";
        }
        if (basis instanceof BandBasis.FromMean mean) {
            return "Mean " + number(mean.mean()) + " ± " + number(mean.factor()) + " × standard deviation "
                    + number(mean.standardDeviation()) + " of " + values(n) + asked(method) + ".";
        }
        if (basis instanceof BandBasis.FromRanks ranks) {
            return "From the value of rank " + ranks.lowerRank() + " to that of rank " + ranks.upperRank() + " of "
                    + values(n) + asked(method) + ", achieved " + percent(ranks.achievedConfidence()) + ".";
        }
        if (basis instanceof BandBasis.FromMedian median && method instanceof BandMethod.Robust robust) {
            return "Median " + number(median.median()) + " ± " + number(robust.k())
                    + " × 1.4826 × median absolute deviation " + number(median.medianAbsoluteDeviation()) + " of "
                    + values(n) + ".";
        }
        return "Typed by the studio.";
    }

    private static String asked(BandMethod method) {
        if (method instanceof BandMethod.Tolerance tolerance) {
            return asked(tolerance.content(), tolerance.confidence());
        }
        return method instanceof BandMethod.DistributionFree free ? asked(free.content(), free.confidence()) : "";
    }

    private static String asked(double content, double confidence) {
        return ": holds " + percent(content) + " of the population with a confidence of " + percent(confidence);
    }

    private static String none(BandMethod method, NoBandPossible none) {
        String needed = none.neededN().isPresent() ? ", " + none.neededN().getAsLong() + " are needed" : "";
        return switch (none.reason()) {
            case TOO_FEW_VALUES -> "No band: the class has " + values(none.n()) + needed + ".";
            case TOO_FEW_FOR_CONFIDENCE ->
                "No band: the class has " + values(none.n()) + needed + " for a distribution-free band"
                        + asked(method).replace(": holds", " that holds") + ".";
            case NO_SPREAD ->
                "No band: too many of the " + values(none.n()) + " are equal, so that it would have no width.";
        };
    }

    private static String values(int n) {
        return n == 1 ? "1 value" : n + " values";
    }

    private static String number(double value) {
        return NumberText.plain(value, DECIMALS);
    }

    private static String percent(double share) {
        return NumberText.plain(100 * share, DECIMALS) + " %";
    }
}
