package studio.stancebook.statistics;

/**
 * The half-width r(x) for which [x - r, x + r] holds a given share of the standard normal distribution:
 * Phi(x + r) - Phi(x - r) = content, x &gt;= 0. It grows with x, from z((1 + content) / 2) at 0.
 */
final class ContentHalfWidth {

    private final double content;
    private final double atCentre;
    private final double leastBeyondCentre;

    ContentHalfWidth(double content) {
        this.content = content;
        this.atCentre = StandardNormal.upperQuantile((1 - content) / 2);
        this.leastBeyondCentre = StandardNormal.quantile(content);
    }

    /**
     * r(x). The bracket: r is not below that at the centre, and x + r must lie above the content quantile; the width that
     * reaches z((1 + content) / 2) beyond x + x is always enough.
     */
    double at(double x) {
        double low = Math.max(atCentre, x + leastBeyondCentre);
        double high = x + atCentre;
        return low >= high ? high : Numerics.root(r -> excess(x, r), low, high);
    }

    /** Share held by a half-width less the content; for a large content from the two tails, where no digits cancel. */
    private double excess(double x, double r) {
        return content > 0.5
                ? (1 - content) - StandardNormal.above(r - x) - StandardNormal.above(r + x)
                : StandardNormal.between(x - r, x + r) - content;
    }
}
