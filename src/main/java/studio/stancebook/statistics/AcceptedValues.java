package studio.stancebook.statistics;

/** The door of a column: what may enter it. */
final class AcceptedValues {

    /** Largest magnitude of a value; its square, and a sum of many, is still far from overflow. */
    static final double LARGEST = 1e100;

    private AcceptedValues() {}

    /**
     * A copy of the values, with -0 made 0.
     *
     * @throws IllegalArgumentException if a value is NaN, infinite or beyond 1e100, with its index
     */
    static double[] copyOf(double[] values) {
        double[] copy = new double[values.length];
        for (int i = 0; i < copy.length; i++) {
            double value = values[i];
            copy[i] = isAccepted(value) ? value + 0.0 : accepted(value, "values[" + i + "]");
        }
        return copy;
    }

    /**
     * The value itself, with -0 made 0 so that a value is found again by its number.
     *
     * @throws IllegalArgumentException if it is NaN, infinite or beyond 1e100
     */
    static double accepted(double value, String name) {
        if (!isAccepted(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; only finite numbers between -1e100 and 1e100 enter a column");
        }
        return value + 0.0;
    }

    private static boolean isAccepted(double value) {
        return Math.abs(value) <= LARGEST;
    }
}
