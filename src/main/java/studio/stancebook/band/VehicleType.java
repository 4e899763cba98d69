package studio.stancebook.band;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Kinds of car that the trade lays out differently. */
public enum VehicleType {
    SALOON("saloon"),
    CROSSOVER("crossover"),
    OFF_ROAD("off-road SUV");

    private final String label;

    VehicleType(String label) {
        this.label = label;
    }

    public static Optional<VehicleType> ofKey(String key) {
        return Arrays.stream(values()).filter(type -> type.key().equals(key)).findFirst();
    }

    /** The name in forms, such as {@code off-road}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The trade's word for it. */
    public String label() {
        return label;
    }
}
