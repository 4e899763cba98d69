package studio.stancebook.tyre;

import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.Rounding;

/**
 * The rim code of a tyre size: the nominal rim diameter in inches, whole or half.
 *
 * @param inches 8 to 30, a multiple of 0.5
 */
record RimCode(double inches) {

    static final Interval RANGE = new Interval(8, 30);

    /** @throws IllegalArgumentException if the code is outside 8 to 30 or not a multiple of 0.5 */
    RimCode {
        PlausibleSize.require("rim code", inches, RANGE, "");
        if (2 * inches != Math.rint(2 * inches)) {
            throw new IllegalArgumentException(
                    "rim code " + NumberText.plain(inches, 3) + " is not accepted, whole and half codes are");
        }
    }

    /**
     * Nominal rim diameter = code x 25.4, rounded half up to a whole millimetre: 16 gives 406, 17.5 gives 445. (UN
     * Regulation No. 30 and ISO 4000-1, as remembered.)
     */
    double nominalDiameterMm() {
        return Rounding.halfUp(unroundedDiameterMm());
    }

    /** Code x 25.4. */
    double unroundedDiameterMm() {
        return inches * LengthUnit.MM_PER_INCH;
    }

    /** The code as written, such as 17 or 22.5. */
    String text() {
        return NumberText.plain(inches, 1);
    }
}
