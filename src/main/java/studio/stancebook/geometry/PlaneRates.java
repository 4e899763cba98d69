package studio.stancebook.geometry;

/**
 * How fast the inclination of a plane that touches a tyre changes, degrees per mm; infinite where the point lies on the tyre
 * outline.
 *
 * @param x by the x of the point, and less this by the x of the wheel centre
 * @param z by the height of the point, and less this by the height of the wheel centre
 * @param radius by the radius of the tyre
 */
record PlaneRates(double x, double z, double radius) {

    /** Of a plane that has no part in an angle. */
    static final PlaneRates NONE = new PlaneRates(0, 0, 0);

    boolean finite() {
        return Double.isFinite(x) && Double.isFinite(z) && Double.isFinite(radius);
    }
}
