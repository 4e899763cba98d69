package studio.stancebook.geometry;

import java.util.Optional;

/**
 * First-order sensitivities of an underbody angle, degrees per mm, each with everything else held still.
 *
 * <p>The touch is held still too: where it lies inside an edge it moves along that edge when something changes, but there
 * the angle is stationary, so to first order it does not matter (envelope theorem). The partials by the touch therefore
 * are those by the part of the body that is touched, and moving the whole underbody by dz changes the angle by touchZ x
 * dz.
 *
 * @param touchX by the x of the touched part of the body
 * @param touchZ by the height of the touched part of the body
 * @param wheelbase by the wheelbase, the rear tyre moving rearward while body and front tyre stay
 * @param frontCentreHeight by the height of the front wheel centre
 * @param frontRadius by the radius of the front arc about an unmoved centre; a tyre that stays on the ground changes by
 *     the sum of this and {@code frontCentreHeight}
 * @param rearCentreHeight by the height of the rear wheel centre
 * @param rearRadius by the radius of the rear arc about an unmoved centre
 */
public record AnglePartials(
        double touchX,
        double touchZ,
        double wheelbase,
        double frontCentreHeight,
        double frontRadius,
        double rearCentreHeight,
        double rearRadius) {

    /** Of an angle that is held at 0. */
    static final AnglePartials NONE = new AnglePartials(0, 0, 0, 0, 0, 0, 0);

    /** Of the sum of two inclinations; empty when one of them changes infinitely fast. */
    static Optional<AnglePartials> ofSum(PlaneRates front, PlaneRates rear) {
        if (!front.finite() || !rear.finite()) {
            return Optional.empty();
        }
        return Optional.of(new AnglePartials(
                front.x() + rear.x(),
                front.z() + rear.z(),
                -rear.x(),
                -front.z(),
                front.radius(),
                -rear.z(),
                rear.radius()));
    }
}
