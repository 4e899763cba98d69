package studio.stancebook.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the lean of a windscreen or a backlight is read from; kept is the angle from the horizontal alone. */
public enum AngleReference {
    HORIZONTAL,
    VERTICAL;

    /** The reference of a word, {@code horizontal} or {@code vertical}. */
    public static Optional<AngleReference> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key().equals(key)).findFirst();
    }

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The angle from here of one from the horizontal, and the other way round. */
    public double of(double degFromHorizontal) {
        return this == HORIZONTAL ? degFromHorizontal : 90 - degFromHorizontal;
    }

    /** As {@link #of(double)}, for all angles of a range. */
    public Interval of(Interval fromHorizontal) {
        return this == HORIZONTAL
                ? fromHorizontal
                : new Interval(of(fromHorizontal.upper()), of(fromHorizontal.lower()));
    }
}
