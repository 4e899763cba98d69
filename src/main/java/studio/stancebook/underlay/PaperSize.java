package studio.stancebook.underlay;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Sizes of ISO 216, laid across. */
public enum PaperSize {
    A4(297, 210, 2.5),
    A3(420, 297, 3),
    A2(594, 420, 3.8),
    A1(841, 594, 5),
    A0(1189, 841, 6.5);

    private final double widthMm;
    private final double heightMm;
    private final double letteringMm;

    PaperSize(double widthMm, double heightMm, double letteringMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.letteringMm = letteringMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** Height of the lettering (1 em). */
    double letteringMm() {
        return letteringMm;
    }

    /** The name in addresses, such as {@code a3}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The size of a name, in small letters or capitals. */
    public static Optional<PaperSize> ofKey(String key) {
        return Arrays.stream(values())
                .filter(size -> size.name().equalsIgnoreCase(key))
                .findFirst();
    }

    /** All names, for a message. */
    public static String keys() {
        return Arrays.stream(values()).map(PaperSize::key).collect(Collectors.joining(", "));
    }
}
