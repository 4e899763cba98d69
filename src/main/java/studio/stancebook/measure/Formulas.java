package studio.stancebook.measure;

import static studio.stancebook.dimension.Reading.*;

import java.util.Set;
import studio.stancebook.dimension.Estimate;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Reading;

/** The formulas that are more than one reading over another. */
final class Formulas {

    private Formulas() {}

    static Formula.Result rockerOffset(Subject s) {
        Estimate centre =
                s.get(FRONT_CENTRE_HEIGHT).plus(s.get(REAR_CENTRE_HEIGHT)).times(0.5);
        return Formula.Result.of(s.get(ROCKER_HEIGHT).minus(centre).over(s.get(WHEEL_DIAMETER)));
    }

    /** The top of a tyre is its centre height plus its free radius, loaded or not. */
    static Formula.Result archGap(Subject s, Reading arch, Reading centre, Reading diameter) {
        Estimate tyreTop = s.get(centre).plus(s.get(diameter).times(0.5));
        return Formula.Result.of(s.get(arch).minus(tyreTop).over(s.get(WHEEL_DIAMETER)));
    }

    /** The x halfway between the edges of a wheel opening. */
    static Estimate archCentre(Subject s, Reading fore, Reading aft) {
        return s.get(fore).plus(s.get(aft)).times(0.5);
    }

    static Formula.Result screenAim(Subject s) {
        Estimate rise = s.get(SCREEN_TOP_Z).minus(s.get(COWL_Z));
        Estimate run = s.get(SCREEN_TOP_X).minus(s.get(COWL_X));
        Estimate drop = rise.over(run).times(s.get(COWL_X));
        return Formula.Result.of(
                s.get(COWL_Z).minus(drop).minus(s.get(FRONT_CENTRE_HEIGHT)).over(s.get(WHEEL_DIAMETER)));
    }

    /** The mirror image of {@link #screenAim} at the rear wheel. */
    static Formula.Result backlightAim(Subject s) {
        Estimate rise = s.get(BACKLIGHT_TOP_Z).minus(s.get(BACKLIGHT_BASE_Z));
        Estimate run = s.get(BACKLIGHT_TOP_X).minus(s.get(BACKLIGHT_BASE_X));
        Estimate ahead = s.get(WHEELBASE).minus(s.get(BACKLIGHT_BASE_X));
        Estimate height = s.get(BACKLIGHT_BASE_Z).plus(rise.over(run).times(ahead));
        return Formula.Result.of(height.minus(s.get(REAR_CENTRE_HEIGHT)).over(s.get(WHEEL_DIAMETER)));
    }

    static Formula.Result glassToBody(Subject s) {
        Estimate belt = s.get(BELT_AT_MID_WHEELBASE);
        Estimate glass = s.get(ROOF_AT_MID_WHEELBASE).minus(belt);
        Estimate body = belt.minus(s.get(ROCKER_AT_MID_WHEELBASE));
        return Formula.Result.of(glass.over(body));
    }

    /** An angle of a line of the body: says when it was typed because the landmarks are not there. */
    static Formula.Result slope(Subject s, Reading angle) {
        boolean drawn = angle == SCREEN_ANGLE
                ? s.drawn(Landmark.COWL, Landmark.SCREEN_TOP)
                : s.drawn(Landmark.BACKLIGHT_TOP, Landmark.BACKLIGHT_BASE);
        return Formula.Result.of(s.get(angle), drawn ? Set.of() : Set.of(Note.TYPED));
    }
}
