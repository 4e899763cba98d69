package studio.stancebook.demo;

import java.util.SplittableRandom;

/** Chance that falls the same way on every machine: one seed, one order, and nothing whose rounding is left open. */
final class Chance {

    private static final double GREATER = 0.7;

    private final SplittableRandom random;
    private final double reach;

    Chance(long seed) {
        this(seed, 1);
    }

    private Chance(long seed, double reach) {
        this.random = new SplittableRandom(seed);
        this.reach = reach;
    }

    /** Chance that never strays: everything comes out at its mean. */
    static Chance none() {
        return new Chance(0, 0);
    }

    /** From -1 to 1, rarer towards the ends. */
    double bell() {
        double first = random.nextDouble() * 2 - 1;
        double second = random.nextDouble() * 2 - 1;
        return reach * (GREATER * first + (1 - GREATER) * second);
    }

    /** From 0 to below {@code bound}, any as likely as another. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    /** True that often, as a share. */
    boolean happens(double share) {
        return random.nextDouble() < share;
    }
}
