package studio.stancebook.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
final class StandardNormal {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private StandardNormal() {}

    static double density(double z) {
        return NORMAL.density(z);
    }

    static double below(double z) {
        return NORMAL.cumulativeProbability(z);
    }

    static double above(double z) {
        return NORMAL.survivalProbability(z);
    }

    static double between(double low, double high) {
        return NORMAL.probability(low, high);
    }

    static double quantile(double share) {
        return NORMAL.inverseCumulativeProbability(share);
    }

    /** The z that {@code share} lies above. */
    static double upperQuantile(double share) {
        return NORMAL.inverseSurvivalProbability(share);
    }
}
