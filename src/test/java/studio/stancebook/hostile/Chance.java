package studio.stancebook.hostile;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Draws that are the same in every run with the same seed. */
final class Chance {

    private final RandomGenerator source;

    /** @param seed of the run, @param number of the request in it */
    Chance(long seed, long number) {
        this.source = RandomGeneratorFactory.of("SplittableRandom").create(seed * 1_000_003 + number);
    }

    int below(int bound) {
        return source.nextInt(bound);
    }

    boolean oneIn(int times) {
        return below(times) == 0;
    }

    double between(double low, double high) {
        return low + source.nextDouble() * (high - low);
    }

    <T> T of(List<T> things) {
        return things.get(below(things.size()));
    }

    @SafeVarargs
    final <T> T of(T... things) {
        return of(Arrays.asList(things));
    }
}
