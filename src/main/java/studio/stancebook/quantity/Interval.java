package studio.stancebook.quantity;

/**
 * A closed interval of real numbers; an end may be infinite, which leaves that side open.
 *
 * @param lower the lower end, not NaN
 * @param upper the upper end, not NaN and not below {@code lower}
 */
public record Interval(double lower, double upper) {

    /** @throws IllegalArgumentException if an end is NaN or {@code lower > upper} */
    public Interval {
        if (Double.isNaN(lower) || Double.isNaN(upper) || lower > upper) {
            throw new IllegalArgumentException(
                    "An interval needs lower <= upper, both numbers; got " + lower + " and " + upper);
        }
    }

    /** True for lower <= value <= upper; false for NaN. */
    public boolean contains(double value) {
        return value >= lower && value <= upper;
    }

    /** upper - lower; infinite when a side is open. */
    public double width() {
        return upper - lower;
    }
}
