package studio.stancebook.geometry;

/**
 * The tyre in the side view: the arc of its static loaded radius about the wheel centre (49 CFR 523.2). A loaded tyre that
 * stands on the ground has its centre at the height of this radius; see {@link #onGround}.
 *
 * @param centreX wheel centre, mm rearward of the front wheel centre, finite
 * @param centreHeight wheel centre above the ground, mm, finite
 * @param radius radius of the arc, mm, 0 or more; 0 makes the textbook simplification of a wheel that is a point
 */
public record TyreArc(double centreX, double centreHeight, double radius) {

    /** @throws IllegalArgumentException if a value is NaN or infinite, or the radius negative */
    public TyreArc {
        if (!Double.isFinite(centreX) || !Double.isFinite(centreHeight)) {
            throw new IllegalArgumentException(
                    "A wheel centre needs two finite numbers; got " + centreX + " and " + centreHeight);
        }
        if (!(radius >= 0) || Double.isInfinite(radius)) {
            throw new IllegalArgumentException("A radius is 0 or more and finite; got " + radius);
        }
    }

    /** The tyre of this static loaded radius that stands on the ground. */
    public static TyreArc onGround(double centreX, double radius) {
        return new TyreArc(centreX, radius, radius);
    }
}
