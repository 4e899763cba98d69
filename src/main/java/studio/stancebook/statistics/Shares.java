package studio.stancebook.statistics;

/** Checks of shares such as a content or a confidence. */
final class Shares {

    private Shares() {}

    /** @throws IllegalArgumentException if {@code share} is NaN or not between 0 and 1, ends excluded */
    static void requireInside(String name, double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException(name + " is " + share + "; it must be between 0 and 1, ends excluded");
        }
    }

    /** @throws IllegalArgumentException if {@code share} is NaN or not from 0 to 1, ends included */
    static void requireWithin(String name, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(name + " is " + share + "; it must be from 0 to 1, ends included");
        }
    }

    /** @throws IllegalArgumentException if {@code n < least} */
    static void requireAtLeast(int least, int n) {
        if (n < least) {
            throw new IllegalArgumentException("n is " + n + "; it must be " + least + " or more");
        }
    }
}
