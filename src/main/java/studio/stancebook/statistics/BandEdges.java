package studio.stancebook.statistics;

import java.util.Optional;
import studio.stancebook.quantity.Interval;

/**
 * The edges of a band.
 *
 * @param lower in the unit of the column; negative infinity only for a rule without a lower limit
 * @param upper above {@code lower}; positive infinity only for a rule without an upper limit
 * @param lowerInterval where the lower edge would lie if the whole population were known, at 95 %; one end may be
 *     infinite, where the class is too small to say; empty for a rule, for a robust band that is provisional, and
 *     where neither end can be said
 * @param upperInterval likewise for the upper edge
 * @param n how many values the class had
 * @param provisional true if the band was computed from fewer than {@value ClassSize#SUFFICIENT_FROM} values
 * @param basis how the edges came about
 */
public record BandEdges(
        double lower,
        double upper,
        Optional<Interval> lowerInterval,
        Optional<Interval> upperInterval,
        int n,
        boolean provisional,
        BandBasis basis)
        implements BandOutcome {

    /** @throws IllegalArgumentException if {@code lower} is not below {@code upper} */
    public BandEdges {
        if (!(lower < upper)) {
            throw new IllegalArgumentException("A band needs lower < upper; got " + lower + " and " + upper);
        }
    }

    /** The band as an interval; its ends belong to it. */
    public Interval interval() {
        return new Interval(lower, upper);
    }
}
