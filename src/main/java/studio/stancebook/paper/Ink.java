package studio.stancebook.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a path is drawn.
 *
 * @param stroke colour of the line as {@code #rrggbb}; null for none
 * @param widthMm of the line
 * @param dashesMm dashes and gaps; empty for an unbroken line
 * @param fill colour of the inside as {@code #rrggbb}; null for none
 * @param fillOpacity 0 to 1
 */
public record Ink(
        @Nullable String stroke,
        double widthMm,
        List<Double> dashesMm,
        @Nullable String fill,
        double fillOpacity) {

    public Ink {
        dashesMm = List.copyOf(dashesMm);
    }

    public static Ink line(String colour, double widthMm, Double... dashesMm) {
        return new Ink(colour, widthMm, List.of(dashesMm), null, 1);
    }

    public static Ink wash(String colour, double opacity) {
        return new Ink(null, 0, List.of(), colour, opacity);
    }
}
