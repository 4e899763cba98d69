package studio.stancebook.tyre.web;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.tyre.TyreDesignation;

/**
 * A tyre size as the API tells it.
 *
 * @param aspectRatio percent; null for a flotation size, which does not state it
 * @param overallDiameterMm the diameter that measures use
 * @param unroundedDiameterMm the same without rounding on the way
 * @param tabulatedDiameterMm the design diameter in the standards' tables; null for a flotation size, where it is not known
 * @param diameterIs {@code by-rule}, or {@code nominal} for a flotation size, whose design diameter is smaller
 * @param serviceDescription what follows the size; null when nothing does
 */
record TyreJson(
        String designation,
        String notation,
        double sectionWidthMm,
        @Nullable Double aspectRatio,
        double rimCode,
        double rimDiameterMm,
        double overallDiameterMm,
        double unroundedDiameterMm,
        @Nullable Double tabulatedDiameterMm,
        double sectionHeightMm,
        String diameterIs,
        @Nullable String serviceDescription) {

    static TyreJson of(TyreDesignation tyre) {
        return new TyreJson(
                tyre.text(),
                tyre.notation(),
                tyre.sectionWidthMm(),
                orNull(tyre.aspectRatio()),
                tyre.rimCode(),
                tyre.rimDiameterMm(),
                tyre.overallDiameterMm(),
                tyre.unroundedDiameterMm(),
                orNull(tyre.tabulatedDiameterMm()),
                tyre.sectionHeightMm(),
                tyre.tabulatedDiameterMm().isPresent() ? "by-rule" : "nominal",
                tyre.serviceDescription().orElse(null));
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
