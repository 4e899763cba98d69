package studio.stancebook.statistics;

/** A function that increases strictly, with its slope; its root is found by Newton's method kept within a bracket. */
interface IncreasingFunction {

    /** Steps below this share of the argument are lost in rounding. */
    double LAST_STEP = 4 * Math.ulp(1.0);

    int MOST_STEPS = 200;

    /** Value and slope; the value may be infinite, the slope then does not matter. */
    Point at(double x);

    /** Value and slope at one argument. */
    record Point(double value, double slope) {}

    /**
     * The root in [lower, upper], to about the rounding of the function. Where Newton's step would leave the bracket, or
     * the slope cannot be used, the bracket is halved.
     *
     * @param start within [lower, upper]
     */
    default double root(double lower, double upper, double start) {
        double low = lower;
        double high = upper;
        double x = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            Point point = at(x);
            if (point.value() == 0) {
                return x;
            }
            if (point.value() < 0) {
                low = x;
            } else {
                high = x;
            }
            double next = x - point.value() / point.slope();
            next = next > low && next < high ? next : low + (high - low) / 2;
            if (Math.abs(next - x) <= LAST_STEP * Math.abs(x)) {
                return next;
            }
            x = next;
        }
        return x;
    }

    /** The root when no bracket is known: looks outward from {@code start} in doubling steps, the first {@code reach}. */
    default double rootNear(double start, double reach) {
        double low = start - reach;
        for (double by = 2 * reach; at(low).value() > 0; by *= 2) {
            low -= by;
        }
        double high = start + reach;
        for (double by = 2 * reach; at(high).value() < 0; by *= 2) {
            high += by;
        }
        return root(low, high, start);
    }
}
