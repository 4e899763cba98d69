package studio.stancebook.dimension;

/** The two axles, each with its tyre. */
public enum Axle {
    FRONT("frontTyre", Dimension.FRONT_TYRE_DIAMETER, Dimension.FRONT_RIM_DIAMETER, Dimension.FRONT_LOADED_RADIUS),
    REAR("rearTyre", Dimension.REAR_TYRE_DIAMETER, Dimension.REAR_RIM_DIAMETER, Dimension.REAR_LOADED_RADIUS);

    private final String tyreKey;
    private final Dimension tyreDiameter;
    private final Dimension rimDiameter;
    private final Dimension loadedRadius;

    Axle(String tyreKey, Dimension tyreDiameter, Dimension rimDiameter, Dimension loadedRadius) {
        this.tyreKey = tyreKey;
        this.tyreDiameter = tyreDiameter;
        this.rimDiameter = rimDiameter;
        this.loadedRadius = loadedRadius;
    }

    /** The JSON name of this axle's tyre designation. */
    public String tyreKey() {
        return tyreKey;
    }

    public Dimension tyreDiameter() {
        return tyreDiameter;
    }

    public Dimension rimDiameter() {
        return rimDiameter;
    }

    public Dimension loadedRadius() {
        return loadedRadius;
    }
}
