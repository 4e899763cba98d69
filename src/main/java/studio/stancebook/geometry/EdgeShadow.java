package studio.stancebook.geometry;

/**
 * The part of a straight edge that lies in a tyre's shadow (the tyre and what is above its lower half, see
 * {@link TangentPlane}), as a range of the parameter t that runs from 0 at one end of the edge to 1 at the other.
 *
 * @param enter where the line through the edge enters the shadow, possibly outside 0 to 1
 * @param leave where it leaves it; not above {@code enter} when it misses the shadow
 */
record EdgeShadow(double enter, double leave) {

    private static final EdgeShadow MISSED = new EdgeShadow(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static EdgeShadow of(TyreArc tyre, double fromX, double fromZ, double dx, double dz) {
        double u = fromX - tyre.centreX();
        double v = fromZ - tyre.centreHeight();
        return inTyre(tyre.radius(), u, v, dx, dz).joined(aboveCentre(tyre.radius(), u, v, dx, dz));
    }

    boolean missed() {
        return !(enter < leave);
    }

    private static EdgeShadow inTyre(double radius, double u, double v, double dx, double dz) {
        double a = dx * dx + dz * dz;
        double halfB = u * dx + v * dz;
        double offLine = (u * dz - v * dx) / Math.sqrt(a);
        double halfChordSquare = radius * radius - offLine * offLine;
        if (!(halfChordSquare > 0)) {
            return MISSED;
        }
        double halfChord = Math.sqrt(halfChordSquare / a);
        return new EdgeShadow(-halfB / a - halfChord, -halfB / a + halfChord);
    }

    private static EdgeShadow aboveCentre(double radius, double u, double v, double dx, double dz) {
        return whereExceeds(u, dx, -radius)
                .overlap(whereExceeds(-u, -dx, -radius))
                .overlap(whereExceeds(v, dz, 0));
    }

    /** The t for which start + t x rate > floor. */
    private static EdgeShadow whereExceeds(double start, double rate, double floor) {
        if (rate == 0) {
            return start > floor ? new EdgeShadow(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY) : MISSED;
        }
        double at = (floor - start) / rate;
        return rate > 0 ? new EdgeShadow(at, Double.POSITIVE_INFINITY) : new EdgeShadow(Double.NEGATIVE_INFINITY, at);
    }

    private EdgeShadow overlap(EdgeShadow other) {
        return new EdgeShadow(Math.max(enter, other.enter), Math.min(leave, other.leave));
    }

    private EdgeShadow joined(EdgeShadow other) {
        if (missed()) {
            return other;
        }
        return other.missed() ? this : new EdgeShadow(Math.min(enter, other.enter), Math.max(leave, other.leave));
    }
}
