package studio.stancebook.statistics;

/**
 * A sequence of random whole numbers that is fixed by its seed, on every machine and with every library: SplitMix64 (G. L.
 * Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014; constants from memory,
 * checked against {@link java.util.SplittableRandom}).
 */
final class Draws {

    private static final long STEP = 0x9e3779b97f4a7c15L;

    private long state;

    Draws(long seed) {
        this.state = seed;
    }

    long next() {
        state += STEP;
        long mixed = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
        return mixed ^ (mixed >>> 31);
    }

    /** A whole number from 0 to {@code bound - 1}; none is likelier than another by more than bound / 2^32. */
    int below(int bound) {
        return (int) ((next() >>> 32) * bound >>> 32);
    }
}
