package studio.stancebook.statistics;

import org.jspecify.annotations.Nullable;

/** How the edges of a band are found. A method that exists is possible: its constructor refuses what is not. */
public sealed interface BandMethod {

    /** The name of the method in addresses, files and the interface for programs. */
    String key();

    /**
     * Limits that a person typed; one side may be open.
     *
     * @param lower in the unit of the measure; negative infinity leaves that side open
     * @param upper above {@code lower}; positive infinity leaves that side open
     * @param reason why these limits, not blank
     */
    record Rule(double lower, double upper, String reason) implements BandMethod {

        /** @throws ImpossibleBandMethod if no side is limited, the limits are not in order, or the reason is blank */
        public Rule {
            if (lower == Double.NEGATIVE_INFINITY && upper == Double.POSITIVE_INFINITY) {
                throw new ImpossibleBandMethod("lower", "A rule needs a lower limit, an upper limit or both");
            }
            if (!(lower < upper)) {
                throw new ImpossibleBandMethod(
                        "lower", "lower is " + lower + " and upper is " + upper + "; lower must be below upper");
            }
            if (reason.isBlank()) {
                throw new ImpossibleBandMethod("reason", "reason is blank; a rule says why it holds");
            }
        }

        /**
         * A rule of two limits, of which one may be missing.
         *
         * @throws ImpossibleBandMethod if both are missing, a limit is infinite or no number, or as the constructor says
         */
        public static Rule of(@Nullable Double lower, @Nullable Double upper, String reason) {
            return new Rule(
                    limit("lower", lower, Double.NEGATIVE_INFINITY),
                    limit("upper", upper, Double.POSITIVE_INFINITY),
                    reason);
        }

        private static double limit(String field, @Nullable Double value, double open) {
            if (value == null) {
                return open;
            }
            if (!Double.isFinite(value)) {
                throw new ImpossibleBandMethod(
                        field, field + " is " + value + "; it must be a finite number, or missing for an open side");
            }
            return value;
        }

        @Override
        public String key() {
            return "rule";
        }
    }

    /**
     * Two quantiles of the class.
     *
     * @param lowerQuantile in [0, 1], 0 being the smallest value
     * @param upperQuantile above {@code lowerQuantile}, in [0, 1], 1 being the largest value
     * @param type how quantiles are read
     */
    record Percentile(double lowerQuantile, double upperQuantile, QuantileType type) implements BandMethod {

        /** @throws ImpossibleBandMethod if a quantile is outside [0, 1] or they are not in order */
        public Percentile {
            requireWithin("lowerQuantile", lowerQuantile);
            requireWithin("upperQuantile", upperQuantile);
            if (lowerQuantile >= upperQuantile) {
                throw new ImpossibleBandMethod(
                        "lowerQuantile",
                        "lowerQuantile is " + lowerQuantile + "; it must be below upperQuantile, " + upperQuantile);
            }
        }

        private static void requireWithin(String field, double quantile) {
            if (!(quantile >= 0 && quantile <= 1)) {
                throw new ImpossibleBandMethod(field, field + " is " + quantile + "; it must be from 0 to 1");
            }
        }

        @Override
        public String key() {
            return "percentile";
        }
    }

    /**
     * Two-sided normal tolerance interval, mean +/- k s with the exact {@link ToleranceFactor}.
     *
     * @param content share of the population, in (0, 1), ends excluded
     * @param confidence probability that so much is held, in (0, 1), ends excluded
     */
    record Tolerance(double content, double confidence) implements BandMethod {

        /** @throws ImpossibleBandMethod if a share is not between 0 and 1 */
        public Tolerance {
            ImpossibleBandMethod.requireInside("content", content);
            ImpossibleBandMethod.requireInside("confidence", confidence);
        }

        @Override
        public String key() {
            return "tolerance";
        }
    }

    /**
     * Two-sided tolerance interval between two values of the class, {@link studio.stancebook.statistics.DistributionFree}.
     *
     * @param content share of the population, in (0, 1), ends excluded
     * @param confidence probability that so much is held, in (0, 1), ends excluded
     */
    record DistributionFree(double content, double confidence) implements BandMethod {

        /** @throws ImpossibleBandMethod if a share is not between 0 and 1 */
        public DistributionFree {
            ImpossibleBandMethod.requireInside("content", content);
            ImpossibleBandMethod.requireInside("confidence", confidence);
        }

        @Override
        public String key() {
            return "distribution-free";
        }
    }

    /**
     * Median +/- k x 1.4826 x median absolute deviation.
     *
     * @param k about how many standard deviations, in (0, 100]
     */
    record Robust(double k) implements BandMethod {

        private static final double LARGEST = 100;

        /** @throws ImpossibleBandMethod if {@code k} is not above 0 and at most 100 */
        public Robust {
            if (!(k > 0 && k <= LARGEST)) {
                throw new ImpossibleBandMethod("k", "k is " + k + "; it must be above 0 and at most 100");
            }
        }

        @Override
        public String key() {
            return "robust";
        }
    }
}
