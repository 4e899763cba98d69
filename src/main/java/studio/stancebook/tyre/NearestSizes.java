package studio.stancebook.tyre;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import studio.stancebook.problem.Impossible;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;

/**
 * The metric sizes whose design diameter comes nearest to a wanted one.
 *
 * <p>Enumerated are section widths 125 to 355 mm in steps of 10, aspect ratios 25 to 85 in steps of 5 and rim codes 13 to
 * 24. A combination that no road tyre has is marked as unusual: section height outside 60 to 245 mm, or section width
 * outside 0.30 to 0.80 of the rim diameter (common practice, no source). It is arithmetic: that a size is listed does not
 * say that it is made.
 */
public final class NearestSizes {

    /** The smallest and the largest diameter that can be asked for, mm. */
    public static final Interval DIAMETERS_MM = new Interval(300, 1300);

    private static final int MOST = 200;
    private static final Interval SECTION_HEIGHTS_MM = new Interval(60, 245);
    private static final Interval WIDTHS_BY_RIM = new Interval(0.30, 0.80);
    private static final List<MetricDesignation> SIZES = enumerated();

    private NearestSizes() {}

    /**
     * Ranked by |overall diameter - wanted|; equal differences in the order of width, aspect ratio and rim code, each
     * ascending.
     *
     * @param diameterMm the wanted overall diameter, 300 to 1300 mm
     * @param limit how many to give, 1 to 200
     * @throws Impossible if an argument is outside its range
     */
    public static List<NearestSize> to(double diameterMm, int limit) {
        requireSensible(diameterMm, limit);
        Comparator<NearestSize> byDistance = Comparator.comparingDouble(size -> Math.abs(size.differenceMm()));
        return SIZES.stream()
                .map(size -> compared(size, diameterMm))
                .sorted(byDistance)
                .limit(limit)
                .toList();
    }

    /** All sizes that are compared, in the order of width, aspect ratio and rim code. */
    static Stream<MetricDesignation> sizes() {
        return SIZES.stream();
    }

    private static NearestSize compared(MetricDesignation size, double wantedMm) {
        double diameterMm = size.overallDiameterMm();
        return new NearestSize(size, diameterMm, diameterMm - wantedMm, unusual(size));
    }

    private static void requireSensible(double diameterMm, int limit) {
        if (!DIAMETERS_MM.contains(diameterMm)) {
            throw Impossible.ofField(
                    "diameterMm",
                    "A tyre diameter of " + diameterMm + " mm is not accepted, "
                            + NumberText.plain(DIAMETERS_MM.lower(), 0) + " to "
                            + NumberText.plain(DIAMETERS_MM.upper(), 0) + " mm is.");
        }
        if (limit < 1 || limit > MOST) {
            throw Impossible.ofField("limit", "A limit of " + limit + " is not accepted, 1 to " + MOST + " is.");
        }
    }

    private static List<MetricDesignation> enumerated() {
        List<MetricDesignation> sizes = new ArrayList<>();
        for (int widthMm = 125; widthMm <= 355; widthMm += 10) {
            for (int aspect = 25; aspect <= 85; aspect += 5) {
                for (int rim = 13; rim <= 24; rim++) {
                    sizes.add(MetricDesignation.radial(widthMm, aspect, rim));
                }
            }
        }
        return List.copyOf(sizes);
    }

    private static boolean unusual(MetricDesignation size) {
        return !SECTION_HEIGHTS_MM.contains(size.sectionHeightMm())
                || !WIDTHS_BY_RIM.contains(size.sectionWidthMm() / size.rimDiameterMm());
    }
}
