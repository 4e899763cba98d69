package studio.stancebook.measure;

import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.Rounding;

/** The footprint in square feet as 49 CFR 523.2 rounds it. */
public final class Footprint {

    private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;

    private Footprint() {}

    /**
     * Wheelbase and both tracks are first rounded to 0.1 inch; wheelbase times mean track in square feet is then rounded
     * to 0.1 (the rounding is from memory).
     *
     * @param wheelbaseMm the wheelbase in mm
     * @param frontTrackMm the front track in mm
     * @param rearTrackMm the rear track in mm
     */
    public static double squareFeet(double wheelbaseMm, double frontTrackMm, double rearTrackMm) {
        double meanTrack = (inches(frontTrackMm) + inches(rearTrackMm)) / 2;
        return Rounding.halfUp(inches(wheelbaseMm) * meanTrack / SQUARE_INCHES_PER_SQUARE_FOOT, 1);
    }

    private static double inches(double mm) {
        return Rounding.halfUp(mm / LengthUnit.MM_PER_INCH, 1);
    }
}
