package studio.stancebook.tyre;

import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.Rounding;

/**
 * A metric size, such as {@code LT235/85R16 120/116R}.
 *
 * <p>Design overall diameter = nominal rim diameter + 2 x section height; section height = section width x aspect ratio
 * / 100, rounded half up to a whole millimetre before it is doubled (UN Regulation No. 30 paragraph 6.1.2 and ISO
 * 4000-1, as remembered): 225/50R17 gives 432 + 2 x 113 = 658 mm.
 *
 * @param prefix {@code P}, {@code LT}, {@code ST}, {@code T}, {@code HL} or empty
 * @param sectionWidthMm nominal section width, 105 to 455 mm
 * @param aspectPercent section height as a percentage of section width, 20 to 100
 * @param construction {@code R}, {@code B}, {@code D} or {@code -}, with speed letters as in {@code ZR}
 * @param rimCode nominal rim diameter in inches, 8 to 30
 * @param suffix what follows the rim code at once, such as {@code C} or {@code LT}, or empty
 * @param service the service description, or empty
 */
record MetricDesignation(
        String prefix,
        double sectionWidthMm,
        double aspectPercent,
        String construction,
        double rimCode,
        String suffix,
        String service)
        implements TyreDesignation {

    static final Interval WIDTHS_MM = new Interval(105, 455);
    static final Interval ASPECTS_PERCENT = new Interval(20, 100);

    /** @throws IllegalArgumentException if a number is outside its range */
    MetricDesignation {
        PlausibleSize.require("section width", sectionWidthMm, WIDTHS_MM, "mm");
        PlausibleSize.require("aspect ratio", aspectPercent, ASPECTS_PERCENT, "");
        new RimCode(rimCode);
    }

    /** A radial size with nothing before or after it. */
    static MetricDesignation radial(double sectionWidthMm, double aspectPercent, double rimCode) {
        return new MetricDesignation("", sectionWidthMm, aspectPercent, "R", rimCode, "", "");
    }

    @Override
    public String size() {
        return prefix + NumberText.plain(sectionWidthMm, 0) + "/" + NumberText.plain(aspectPercent, 0) + construction
                + rim().text() + suffix;
    }

    @Override
    public String notation() {
        return "metric";
    }

    @Override
    public OptionalDouble aspectRatio() {
        return OptionalDouble.of(aspectPercent);
    }

    @Override
    public double rimDiameterMm() {
        return rim().nominalDiameterMm();
    }

    @Override
    public double sectionHeightMm() {
        return Rounding.halfUp(unroundedSectionHeightMm());
    }

    @Override
    public double overallDiameterMm() {
        return rimDiameterMm() + 2 * sectionHeightMm();
    }

    @Override
    public double unroundedDiameterMm() {
        return rim().unroundedDiameterMm() + 2 * unroundedSectionHeightMm();
    }

    @Override
    public OptionalDouble tabulatedDiameterMm() {
        return OptionalDouble.of(overallDiameterMm());
    }

    @Override
    public Optional<String> serviceDescription() {
        return service.isEmpty() ? Optional.empty() : Optional.of(service);
    }

    private double unroundedSectionHeightMm() {
        return sectionWidthMm * aspectPercent / 100;
    }

    private RimCode rim() {
        return new RimCode(rimCode);
    }
}
