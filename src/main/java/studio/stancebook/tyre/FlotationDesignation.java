package studio.stancebook.tyre;

import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.NumberText;

/**
 * A flotation size, such as {@code 35x12.50R17LT}: overall diameter and section width in inches.
 *
 * <p>The diameter is nominal: 35 x 25.4 = 889 mm. The design diameter in the tables is some 12 mm smaller (31x10.50R15
 * and 35x12.50R17: 775 and 877 mm, from memory), which no rule gives. Section height = (nominal overall diameter -
 * nominal rim diameter) / 2.
 *
 * @param diameterInches nominal overall diameter, 20 to 54 inches
 * @param widthInches nominal section width, 4 to 20 inches
 * @param construction {@code R}, {@code B}, {@code D} or {@code -}
 * @param rimCode nominal rim diameter in inches, 8 to 30, and at least 4 less than the overall diameter
 * @param suffix what follows the rim code at once, such as {@code LT}, or empty
 * @param service the service description, or empty
 */
record FlotationDesignation(
        double diameterInches, double widthInches, String construction, double rimCode, String suffix, String service)
        implements TyreDesignation {

    private static final Interval DIAMETERS_INCHES = new Interval(20, 54);
    private static final Interval WIDTHS_INCHES = new Interval(4, 20);
    private static final double LEAST_RUBBER_INCHES = 4;

    /** @throws IllegalArgumentException if a number is outside its range, or the rim does not fit into the tyre */
    FlotationDesignation {
        PlausibleSize.require("overall diameter", diameterInches, DIAMETERS_INCHES, "inches");
        PlausibleSize.require("section width", widthInches, WIDTHS_INCHES, "inches");
        new RimCode(rimCode);
        if (diameterInches - rimCode < LEAST_RUBBER_INCHES) {
            throw new IllegalArgumentException("rim code " + NumberText.plain(rimCode, 1)
                    + " does not fit an overall diameter of " + NumberText.plain(diameterInches, 2)
                    + " inches, it must be at least 4 less");
        }
    }

    @Override
    public String size() {
        return NumberText.plain(diameterInches, 2) + "x" + NumberText.fixed(widthInches, 2) + construction
                + new RimCode(rimCode).text() + suffix;
    }

    @Override
    public String notation() {
        return "flotation";
    }

    @Override
    public double sectionWidthMm() {
        return widthInches * LengthUnit.MM_PER_INCH;
    }

    @Override
    public OptionalDouble aspectRatio() {
        return OptionalDouble.empty();
    }

    @Override
    public double rimDiameterMm() {
        return new RimCode(rimCode).nominalDiameterMm();
    }

    @Override
    public double sectionHeightMm() {
        return (overallDiameterMm() - rimDiameterMm()) / 2;
    }

    @Override
    public double overallDiameterMm() {
        return diameterInches * LengthUnit.MM_PER_INCH;
    }

    @Override
    public double unroundedDiameterMm() {
        return overallDiameterMm();
    }

    @Override
    public OptionalDouble tabulatedDiameterMm() {
        return OptionalDouble.empty();
    }

    @Override
    public Optional<String> serviceDescription() {
        return service.isEmpty() ? Optional.empty() : Optional.of(service);
    }
}
