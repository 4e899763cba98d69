package studio.stancebook.dimension;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The named points of a side view, in the axes of ISO 4130 with x = 0 at the front wheel centre, z = 0 at the ground. */
public enum Landmark {
    COWL("cowl", "Cowl, base of the windscreen"),
    SCREEN_TOP("screenTop", "Top of the windscreen"),
    ROOF_APEX("roofApex", "Highest point of the roof"),
    BACKLIGHT_TOP("backlightTop", "Top of the backlight"),
    BACKLIGHT_BASE("backlightBase", "Base of the backlight"),
    TAIL_EDGE("tailEdge", "Tail edge"),
    BELT_FRONT("beltFront", "Belt line, front"),
    BELT_REAR("beltRear", "Belt line, rear"),
    ROCKER_FRONT("rockerFront", "Rocker, front"),
    ROCKER_REAR("rockerRear", "Rocker, rear"),
    ARCH_FRONT_TOP("archFrontTop", "Top of the front wheel arch"),
    ARCH_REAR_TOP("archRearTop", "Top of the rear wheel arch"),
    H_POINT("hPoint", "H-point"),
    FRONT_DOOR_CUT("frontDoorCut", "Front door shut line at the rocker"),
    REAR_DOOR_CUT("rearDoorCut", "Rear door shut line at the rocker");

    private static final Map<String, Landmark> BY_KEY =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Landmark::key, Function.identity()));

    private final String key;
    private final String label;

    Landmark(String key, String label) {
        this.key = key;
        this.label = label;
    }

    /** The landmark of a JSON name. */
    public static Optional<Landmark> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** The name in JSON, such as {@code screenTop}. */
    public String key() {
        return key;
    }

    /** The trade's word for it. */
    public String label() {
        return label;
    }
}
