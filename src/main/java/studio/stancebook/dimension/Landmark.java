package studio.stancebook.dimension;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import studio.stancebook.quantity.Interval;

/**
 * The named points of a side view, in the axes of ISO 4130 with x = 0 at the front wheel centre, z = 0 at the ground. Each
 * has plausible places as shares of the wheelbase, wide enough for a cab over the axle and for a long rear end: studio
 * decision 0082.
 */
public enum Landmark {
    COWL("cowl", "Cowl, base of the windscreen", new Interval(-0.5, 0.9), new Interval(0.12, 1)),
    SCREEN_TOP("screenTop", "Top of the windscreen", new Interval(-0.5, 1.1), new Interval(0.2, 1.6)),
    ROOF_APEX("roofApex", "Highest point of the roof", new Interval(-0.5, 1.6), new Interval(0.2, 1.6)),
    BACKLIGHT_TOP("backlightTop", "Top of the backlight", new Interval(0, 1.9), new Interval(0.2, 1.6)),
    BACKLIGHT_BASE("backlightBase", "Base of the backlight", new Interval(0.1, 2), new Interval(0.12, 1.4)),
    TAIL_EDGE("tailEdge", "Tail edge", new Interval(0.6, 2.2), new Interval(0.1, 1.5)),
    BELT_FRONT("beltFront", "Belt line, front", new Interval(-0.6, 1), new Interval(0.12, 1.2)),
    BELT_REAR("beltRear", "Belt line, rear", new Interval(0.2, 2), new Interval(0.12, 1.2)),
    ROCKER_FRONT("rockerFront", "Rocker, front", new Interval(-0.3, 0.8), new Interval(0.02, 0.6)),
    ROCKER_REAR("rockerRear", "Rocker, rear", new Interval(0.2, 1.3), new Interval(0.02, 0.6)),
    ARCH_FRONT_TOP("archFrontTop", "Top of the front wheel arch", new Interval(-0.3, 0.3), new Interval(0.1, 0.8)),
    ARCH_REAR_TOP("archRearTop", "Top of the rear wheel arch", new Interval(0.7, 1.3), new Interval(0.1, 0.8)),
    H_POINT("hPoint", "H-point", new Interval(-0.4, 1), new Interval(0.06, 0.9)),
    FRONT_DOOR_CUT(
            "frontDoorCut", "Front door shut line at the rocker", new Interval(-0.4, 0.8), new Interval(0.02, 0.8)),
    REAR_DOOR_CUT("rearDoorCut", "Rear door shut line at the rocker", new Interval(0.1, 1.3), new Interval(0.02, 0.8)),
    BONNET_EDGE("bonnetEdge", "Bonnet, front upper edge", new Interval(-0.8, 0.5), new Interval(0.1, 1)),
    ARCH_FRONT_FORE("archFrontFore", "Front wheel arch, front edge", new Interval(-0.5, 0.1), new Interval(0.02, 0.6)),
    ARCH_FRONT_AFT("archFrontAft", "Front wheel arch, rear edge", new Interval(-0.1, 0.5), new Interval(0.02, 0.6)),
    ARCH_REAR_FORE("archRearFore", "Rear wheel arch, front edge", new Interval(0.5, 1.1), new Interval(0.02, 0.6)),
    ARCH_REAR_AFT("archRearAft", "Rear wheel arch, rear edge", new Interval(0.9, 1.5), new Interval(0.02, 0.6));

    private static final Map<String, Landmark> BY_KEY =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Landmark::key, Function.identity()));

    private final String key;
    private final String label;
    private final Interval xShares;
    private final Interval zShares;

    Landmark(String key, String label, Interval xShares, Interval zShares) {
        this.key = key;
        this.label = label;
        this.xShares = xShares;
        this.zShares = zShares;
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

    /** Plausible x as shares of the wheelbase, ends included. */
    public Interval xShares() {
        return xShares;
    }

    /** Plausible z as shares of the wheelbase, ends included. */
    public Interval zShares() {
        return zShares;
    }
}
