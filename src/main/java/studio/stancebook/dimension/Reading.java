package studio.stancebook.dimension;

import java.util.Arrays;
import java.util.Optional;

/**
 * The lengths and angles that measures are made of, each taken from what is recorded or derived from it; {@link
 * Readings} says how. Also the list that a studio picks from for a ratio of its own.
 */
public enum Reading {
    WHEELBASE("wheelbase", "Wheelbase", "wheelbase"),
    OVERALL_LENGTH("overallLength", "Overall length", "overallLength, or frontOverhang and rearOverhang"),
    FRONT_OVERHANG("frontOverhang", "Front overhang", "frontOverhang, or overallLength and rearOverhang"),
    REAR_OVERHANG("rearOverhang", "Rear overhang", "rearOverhang, or overallLength and frontOverhang"),
    OVERALL_WIDTH("overallWidth", "Overall width", "overallWidth"),
    OVERALL_HEIGHT("overallHeight", "Overall height", "overallHeight, or roofApex"),
    FRONT_TRACK("frontTrack", "Front track", "frontTrack"),
    REAR_TRACK("rearTrack", "Rear track", "rearTrack"),
    GROUND_CLEARANCE("groundClearance", "Ground clearance", "groundClearance, or underbody"),
    CHAIR_HEIGHT("chairHeight", "Chair height", "chairHeight"),
    SEAT_HEIGHT("seatHeight", "Seating reference height", "seatHeight, or hPoint"),
    ROCKER_HEIGHT("rockerHeight", "Mean rocker height", "rockerHeight, or rockerFront and rockerRear"),
    COWL_X("cowl.x", "Dash to axle: cowl, x", "cowl, or dashToAxle"),
    COWL_Z("cowl.z", "Cowl height", "cowl, or cowlHeight"),
    FRONT_TYRE_DIAMETER("frontTyreDiameter", "Front tyre diameter", "frontTyre, or frontTyreDiameter"),
    REAR_TYRE_DIAMETER("rearTyreDiameter", "Rear tyre diameter", "rearTyre, or rearTyreDiameter"),
    WHEEL_DIAMETER("wheelDiameter", "Reference tyre diameter D", "frontTyre and rearTyre, or their diameters"),
    FRONT_RIM_DIAMETER("frontRimDiameter", "Front rim diameter", "frontTyre, or frontRimDiameter"),
    REAR_RIM_DIAMETER("rearRimDiameter", "Rear rim diameter", "rearTyre, or rearRimDiameter"),
    FRONT_CENTRE_HEIGHT("frontCentreHeight", "Front wheel centre height", "frontTyre, or frontTyreDiameter"),
    REAR_CENTRE_HEIGHT("rearCentreHeight", "Rear wheel centre height", "rearTyre, or rearTyreDiameter"),
    SCREEN_TOP_X("screenTop.x", "Top of the windscreen, x", "screenTop"),
    SCREEN_TOP_Z("screenTop.z", "Top of the windscreen, z", "screenTop"),
    ROOF_APEX_X("roofApex.x", "Highest point of the roof, x", "roofApex"),
    BACKLIGHT_TOP_X("backlightTop.x", "Top of the backlight, x", "backlightTop"),
    BACKLIGHT_TOP_Z("backlightTop.z", "Top of the backlight, z", "backlightTop"),
    BACKLIGHT_BASE_X("backlightBase.x", "Base of the backlight, x", "backlightBase"),
    BACKLIGHT_BASE_Z("backlightBase.z", "Base of the backlight, z", "backlightBase"),
    TAIL_EDGE_Z("tailEdge.z", "Tail edge, z", "tailEdge"),
    TAIL_EDGE_X("tailEdge.x", "Tail edge, x", "tailEdge"),
    BELT_FRONT_X("beltFront.x", "Belt line front, x", "beltFront"),
    BELT_FRONT_Z("beltFront.z", "Belt line front, z", "beltFront"),
    BELT_REAR_X("beltRear.x", "Belt line rear, x", "beltRear"),
    BELT_REAR_Z("beltRear.z", "Belt line rear, z", "beltRear"),
    ARCH_FRONT_TOP_Z("archFrontTop.z", "Front wheel arch top", "archFrontTop"),
    ARCH_REAR_TOP_Z("archRearTop.z", "Rear wheel arch top", "archRearTop"),
    ARCH_FRONT_TOP_X("archFrontTop.x", "Front wheel arch top, x", "archFrontTop"),
    ARCH_REAR_TOP_X("archRearTop.x", "Rear wheel arch top, x", "archRearTop"),
    ARCH_FRONT_FORE_X("archFrontFore.x", "Front wheel arch, front edge, x", "archFrontFore"),
    ARCH_FRONT_AFT_X("archFrontAft.x", "Front wheel arch, rear edge, x", "archFrontAft"),
    ARCH_REAR_FORE_X("archRearFore.x", "Rear wheel arch, front edge, x", "archRearFore"),
    ARCH_REAR_AFT_X("archRearAft.x", "Rear wheel arch, rear edge, x", "archRearAft"),
    BONNET_EDGE_Z("bonnetEdge.z", "Bonnet edge, z", "bonnetEdge"),
    H_POINT_X("hPoint.x", "H-point, x", "hPoint"),
    FRONT_DOOR_CUT_X("frontDoorCut.x", "Front door shut line, x", "frontDoorCut"),
    REAR_DOOR_CUT_X("rearDoorCut.x", "Rear door shut line, x", "rearDoorCut"),
    ROOF_AT_MID_WHEELBASE(
            "roofAtMidWheelbase", "Roof at mid-wheelbase", "outline, or two of screenTop, roofApex and backlightTop"),
    BELT_AT_MID_WHEELBASE("beltAtMidWheelbase", "Belt at mid-wheelbase", "beltFront and beltRear"),
    ROCKER_AT_MID_WHEELBASE(
            "rockerAtMidWheelbase", "Rocker at mid-wheelbase", "rockerFront and rockerRear, or rockerHeight"),
    SCREEN_ANGLE("screenAngle", "Windscreen angle", "cowl and screenTop, or screenAngle"),
    BACKLIGHT_ANGLE("backlightAngle", "Backlight angle", "backlightTop and backlightBase, or backlightAngle");

    private final String key;
    private final String label;
    private final String takenFrom;

    Reading(String key, String label, String takenFrom) {
        this.key = key;
        this.label = label;
        this.takenFrom = takenFrom;
    }

    public static Optional<Reading> ofKey(String key) {
        return Arrays.stream(values()).filter(r -> r.key.equals(key)).findFirst();
    }

    /** The name in JSON. */
    public String key() {
        return key;
    }

    public String label() {
        return label;
    }

    /** What has to be recorded for this reading, in JSON names. */
    public String takenFrom() {
        return takenFrom;
    }

    /** True for angles, which no ratio of lengths may be made of. */
    public boolean angle() {
        return this == SCREEN_ANGLE || this == BACKLIGHT_ANGLE;
    }
}
