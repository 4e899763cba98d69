package studio.stancebook.tyre;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tyre size as written on the sidewall. Equal designations have equal text; the service description is kept but
 * changes no dimension.
 */
public sealed interface TyreDesignation permits MetricDesignation, FlotationDesignation {

    /**
     * Reads a metric size ({@code 265/70R17}, with or without {@code P}, {@code LT}, {@code ST}, {@code T} or {@code HL}
     * before it, and a service description such as {@code 113S} after it) or a flotation size ({@code 35x12.50R17LT}).
     * Case and spaces do not matter.
     *
     * @throws UnknownTyreDesignation if the text is neither, or a number in it is outside its plausible range; a size
     *     without an aspect ratio is refused too, because 80 and 82 are both assumed for old sizes
     */
    static TyreDesignation parse(String text) {
        return DesignationReader.read(text);
    }

    /** The size and, where given, the service description, in one canonical spelling that {@link #parse} reads back. */
    default String text() {
        return serviceDescription().map(service -> size() + " " + service).orElseGet(this::size);
    }

    /** The size in canonical spelling, without the service description. */
    String size();

    /** {@code metric} or {@code flotation}. */
    String notation();

    /** Nominal section width, mm. */
    double sectionWidthMm();

    /** Section height as a percentage of section width; empty for a flotation size, which does not state it. */
    OptionalDouble aspectRatio();

    /** Rim code: nominal rim diameter in inches, a multiple of 0.5. */
    double rimCode();

    /** Nominal rim diameter: rim code x 25.4 rounded half up to a whole mm. */
    double rimDiameterMm();

    /** Height of one sidewall, mm; see the two kinds for the rule. */
    double sectionHeightMm();

    /**
     * The diameter that measures use, mm: the design diameter by rule of a metric size, the nominal diameter of a
     * flotation size. Real tyres of one size differ from it by up to about 1.3 percent.
     */
    double overallDiameterMm();

    /** The diameter without any rounding on the way, mm. */
    double unroundedDiameterMm();

    /**
     * The design diameter that the standards tabulate, mm. For a metric size it is the one by rule; for a flotation
     * size it is smaller than the nominal one and follows no rule, and no table is at hand, so it is empty.
     */
    OptionalDouble tabulatedDiameterMm();

    /** Load index, speed symbol and markings after the size, such as {@code 113S} or {@code (92Y) XL}. */
    Optional<String> serviceDescription();
}
