package studio.stancebook.dimension;

import static studio.stancebook.dimension.Unit.COUNT;
import static studio.stancebook.dimension.Unit.DEG;
import static studio.stancebook.dimension.Unit.KG;
import static studio.stancebook.dimension.Unit.MM;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import studio.stancebook.quantity.Interval;

/**
 * Every scalar that can be recorded, with its name in JSON, the code of SAE J1100 where it has one, its unit and a wide
 * plausible range. Codes: AMA specification form 1972 and SAE J1100 as quoted in {@code reference/SOURCES.md}; H100,
 * H106, H107, H147, H156, H5 and H114 are from memory. Ranges: studio decision 0004.
 */
public enum Dimension {
    WHEELBASE("wheelbase", "L101", "Wheelbase", MM, 1000, 6000),
    OVERALL_LENGTH("overallLength", "L103", "Overall length", MM, 1500, 9000),
    FRONT_OVERHANG("frontOverhang", "L104", "Front overhang", MM, 100, 2500),
    REAR_OVERHANG("rearOverhang", "L105", "Rear overhang", MM, 100, 3000),
    OVERALL_WIDTH("overallWidth", "W103", "Overall width", MM, 900, 3000),
    OVERALL_HEIGHT("overallHeight", "H100", "Overall height", MM, 800, 4000),
    FRONT_TRACK("frontTrack", "W101", "Front track", MM, 700, 2700),
    REAR_TRACK("rearTrack", "W102", "Rear track", MM, 700, 2700),
    GROUND_CLEARANCE("groundClearance", "H156", "Ground clearance", MM, 40, 800),
    FRONT_AXLE_CLEARANCE("frontAxleClearance", "", "Clearance under the front axle", MM, 40, 800),
    REAR_AXLE_CLEARANCE("rearAxleClearance", "", "Clearance under the rear axle", MM, 40, 800),
    CHAIR_HEIGHT("chairHeight", "H30", "Chair height", MM, 50, 700),
    SEAT_HEIGHT("seatHeight", "H5", "Seating reference height", MM, 150, 1800),
    ROCKER_HEIGHT("rockerHeight", "", "Rocker height", MM, 50, 1000),
    COWL_HEIGHT("cowlHeight", "H114", "Cowl height", MM, 400, 2200),
    DASH_TO_AXLE("dashToAxle", "", "Dash to axle", MM, -1500, 2500),
    FRONT_TYRE_DIAMETER("frontTyreDiameter", "", "Front tyre diameter", MM, 300, 1400),
    REAR_TYRE_DIAMETER("rearTyreDiameter", "", "Rear tyre diameter", MM, 300, 1400),
    FRONT_RIM_DIAMETER("frontRimDiameter", "", "Front rim diameter", MM, 200, 800),
    REAR_RIM_DIAMETER("rearRimDiameter", "", "Rear rim diameter", MM, 200, 800),
    FRONT_LOADED_RADIUS("frontLoadedRadius", "", "Front loaded radius", MM, 140, 700),
    REAR_LOADED_RADIUS("rearLoadedRadius", "", "Rear loaded radius", MM, 140, 700),
    APPROACH_ANGLE("approachAngle", "H106", "Approach angle", DEG, 1, 89),
    DEPARTURE_ANGLE("departureAngle", "H107", "Departure angle", DEG, 1, 89),
    RAMP_ANGLE("rampAngle", "H147", "Ramp angle", DEG, 1, 89),
    SCREEN_ANGLE("screenAngle", "", "Windscreen angle from the horizontal", DEG, 10, 110),
    BACKLIGHT_ANGLE("backlightAngle", "", "Backlight angle from the horizontal", DEG, 5, 120),
    KERB_MASS("kerbMass", "", "Kerb mass", KG, 200, 8000),
    DRIVEN_AXLES("drivenAxles", "", "Driven axles", COUNT, 1, 4);

    private static final Map<String, Dimension> BY_KEY =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Dimension::key, Function.identity()));

    private final String key;
    private final String code;
    private final String label;
    private final Unit unit;
    private final Interval range;

    Dimension(String key, String code, String label, Unit unit, double least, double most) {
        this.key = key;
        this.code = code;
        this.label = label;
        this.unit = unit;
        this.range = new Interval(least, most);
    }

    /** The dimension of a JSON name. */
    public static Optional<Dimension> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** The name in JSON and in import mappings, such as {@code wheelbase}. */
    public String key() {
        return key;
    }

    /** The code of SAE J1100 such as {@code L101}; empty where there is none. */
    public String code() {
        return code;
    }

    /** The trade's word for it. */
    public String label() {
        return label;
    }

    public Unit unit() {
        return unit;
    }

    /** Plausible values in {@link #unit()}, ends included; outside it an entry is refused. */
    public Interval range() {
        return range;
    }
}
