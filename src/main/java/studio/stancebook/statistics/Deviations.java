package studio.stancebook.statistics;

/**
 * The absolute deviations of ascending values from a centre, ordered without being written down: left of the centre they
 * grow towards the left, right of it towards the right, so they are two sorted sequences.
 */
final class Deviations {

    private final Ascending sorted;
    private final double centre;
    /** How many values lie below the centre. */
    private final int left;

    Deviations(Ascending sorted, double centre) {
        this.sorted = sorted;
        this.centre = centre;
        this.left = sorted.countBelow(centre);
    }

    /** Median of the deviations, exact, in O(log n). */
    double median() {
        int n = sorted.size();
        double low = ofRank((n + 1) / 2);
        return n % 2 == 1 ? low : Quantiles.between(low, ofRank(n / 2 + 1), 0.5);
    }

    /**
     * The deviation of that rank, 1 to n: finds how many of the {@code rank} smallest deviations lie left of the centre,
     * which is the least number whose next deviation is not below the last one taken on the right.
     */
    double ofRank(int rank) {
        int fewest = Math.max(0, rank - (sorted.size() - left));
        int most = Math.min(rank, left);
        while (fewest < most) {
            int taken = (fewest + most) >>> 1;
            if (toTheLeft(taken) >= toTheRight(rank - taken - 1)) {
                most = taken;
            } else {
                fewest = taken + 1;
            }
        }
        return largestOf(fewest, rank - fewest);
    }

    private double largestOf(int takenLeft, int takenRight) {
        double ofLeft = takenLeft > 0 ? toTheLeft(takenLeft - 1) : 0;
        double ofRight = takenRight > 0 ? toTheRight(takenRight - 1) : 0;
        return Math.max(ofLeft, ofRight);
    }

    private double toTheLeft(int index) {
        return centre - sorted.at(left - 1 - index);
    }

    private double toTheRight(int index) {
        return sorted.at(left + index) - centre;
    }
}
