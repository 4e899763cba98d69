package studio.stancebook.demo;

import java.util.SplittableRandom;

/** Chance that falls the same way on every machine: one seed, one order, and nothing whose rounding is left open. */
final class Chance {

    private static final int THROWS = 4;

    private final SplittableRandom random;

    Chance(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** From -1 to 1, mostly near 0: the mean of {@value #THROWS} even throws, stretched. */
    double bell() {
        double sum = 0;
        for (int i = 0; i < THROWS; i++) {
            sum += random.nextDouble() * 2 - 1;
        }
        return Math.max(-1, Math.min(1, sum / THROWS * 1.6));
    }

    /** From 0 to below {@code bound}. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    /** True that often, as a share. */
    boolean happens(double share) {
        return random.nextDouble() < share;
    }
}
