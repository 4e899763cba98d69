package studio.stancebook.drawing.strip;

import org.jspecify.annotations.Nullable;

/**
 * One benchmark on a band strip.
 *
 * @param value in the measure's unit, finite
 * @param name of the benchmark; null where ticks are not named
 * @param href where it is described; null without a link
 */
public record StripTick(
        double value, @Nullable String name, @Nullable String href) {

    /** @throws IllegalArgumentException if {@code value} is not finite */
    public StripTick {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A tick needs a finite value, got " + value);
        }
    }
}
