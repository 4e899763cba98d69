package studio.stancebook.geometry;

/** What the off-road criteria of the regulations are about. */
public enum OffRoadQuantity {
    APPROACH("approach-angle", "deg"),
    DEPARTURE("departure-angle", "deg"),
    /** Ramp angle, the breakover angle of the American text; the two definitions coincide in the side view. */
    RAMP("ramp-angle", "deg"),
    /** Lowest point of the vehicle without its unsprung parts. */
    RUNNING_CLEARANCE("running-clearance", "mm"),
    FRONT_AXLE_CLEARANCE("front-axle-clearance", "mm"),
    REAR_AXLE_CLEARANCE("rear-axle-clearance", "mm"),
    /** Lowest rigid point between the axles. */
    CLEARANCE_BETWEEN_AXLES("clearance-between-axles", "mm");

    private final String key;
    private final String unit;

    OffRoadQuantity(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /** The last part of the message key that names it, and its name in JSON. */
    public String key() {
        return key;
    }

    /** {@code deg} or {@code mm}. */
    public String unit() {
        return unit;
    }
}
