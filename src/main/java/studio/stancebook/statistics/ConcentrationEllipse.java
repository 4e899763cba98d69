package studio.stancebook.statistics;

import java.util.Optional;

/**
 * The ellipse that holds a share of a normal distribution of pairs with the moments of a class: all points whose squared
 * Mahalanobis distance from the mean is at most the quantile of the chi-square distribution with two degrees of freedom.
 * It describes the class; it is no prediction of where the next one will lie, which for few pairs would be larger.
 *
 * @param moments not on a line
 * @param squaredRadius the quantile
 */
public record ConcentrationEllipse(PairMoments moments, double squaredRadius) {

    /** Fewest pairs of which an ellipse is drawn: two are always on a line. */
    public static final int FEWEST = 3;

    /** Why there is none. */
    public enum Lack {
        TOO_FEW,
        ON_A_LINE
    }

    /** What keeps pairs from having an ellipse; empty when they have one. */
    public static Optional<Lack> lack(PairMoments moments) {
        if (moments.n() < FEWEST) {
            return Optional.of(Lack.TOO_FEW);
        }
        return moments.onALine() ? Optional.of(Lack.ON_A_LINE) : Optional.empty();
    }

    /**
     * The ellipse of a share.
     *
     * @param share between 0 and 1, both excluded
     * @throws IllegalArgumentException if there is a {@link #lack}
     */
    public static ConcentrationEllipse of(PairMoments moments, double share) {
        lack(moments).ifPresent(lack -> {
            throw new IllegalArgumentException("No ellipse of " + moments.n() + " pairs: " + lack);
        });
        return new ConcentrationEllipse(moments, chiSquareOfTwo(share));
    }

    /**
     * The quantile of the chi-square distribution with two degrees of freedom, which is the exponential distribution with
     * mean 2: -2 ln(1 - share).
     */
    static double chiSquareOfTwo(double share) {
        return -2 * Math.log1p(-share);
    }

    /** Whether a pair lies in it; its edge belongs to it. */
    public boolean contains(double x, double y) {
        return moments.squaredDistance(x, y) <= squaredRadius;
    }

    /** Half its width, in the unit of x. */
    public double halfWidth() {
        return Math.sqrt(squaredRadius * moments.varianceX());
    }

    /** Half its height, in the unit of y. */
    public double halfHeight() {
        return Math.sqrt(squaredRadius * moments.varianceY());
    }

    /** x at an angle of the circle that the ellipse is the image of, in radians. */
    public double xAt(double angle) {
        return moments.meanX() + halfWidth() * Math.cos(angle);
    }

    /** y at that angle. */
    public double yAt(double angle) {
        double correlation = moments.covariance() / Math.sqrt(moments.varianceX() * moments.varianceY());
        double across = Math.sqrt(Math.max(0, 1 - correlation * correlation));
        return moments.meanY() + halfHeight() * (correlation * Math.cos(angle) + across * Math.sin(angle));
    }
}
