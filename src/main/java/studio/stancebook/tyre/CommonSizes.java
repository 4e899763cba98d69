package studio.stancebook.tyre;

import studio.stancebook.quantity.Interval;

/**
 * Which sizes are common on cars and light trucks: widths that end in 5, aspect ratios in steps of 5, whole rim codes
 * (common practice, no source). A size in this range is one that somebody chose; 345/75R16 is more likely a slip.
 */
public final class CommonSizes {

    private static final Interval WIDTHS_MM = new Interval(125, 335);
    private static final Interval ASPECT_RATIOS = new Interval(25, 85);
    private static final Interval RIM_CODES = new Interval(12, 23);
    private static final Interval DIAMETERS_MM = new Interval(480, 900);

    private CommonSizes() {}

    /** True of a size in the common range. */
    public static boolean contains(TyreDesignation designation) {
        boolean rim = RIM_CODES.contains(designation.rimCode()) && designation.rimCode() % 1 == 0;
        return rim && DIAMETERS_MM.contains(designation.overallDiameterMm()) && isCommonSection(designation);
    }

    private static boolean isCommonSection(TyreDesignation designation) {
        if (designation.aspectRatio().isEmpty()) {
            return WIDTHS_MM.contains(designation.sectionWidthMm());
        }
        double aspectRatio = designation.aspectRatio().getAsDouble();
        return WIDTHS_MM.contains(designation.sectionWidthMm())
                && designation.sectionWidthMm() % 10 == 5
                && ASPECT_RATIOS.contains(aspectRatio)
                && aspectRatio % 5 == 0;
    }
}
