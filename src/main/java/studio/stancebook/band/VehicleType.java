package studio.stancebook.band;

/** Kinds of car that the trade lays out differently. */
public enum VehicleType {
    SALOON("saloon"),
    CROSSOVER("crossover"),
    OFF_ROAD("off-road SUV");

    private final String label;

    VehicleType(String label) {
        this.label = label;
    }

    /** The trade's word for it. */
    public String label() {
        return label;
    }
}
