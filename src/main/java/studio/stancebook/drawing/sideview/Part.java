package studio.stancebook.drawing.sideview;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What can be marked in a side view, each with the measures that speak of it. */
public enum Part {
    WHEELBASE("wheelbase-in-wheels", "wheels-spanned", "wheelbase-share", "footprint"),
    LENGTH("length-in-wheels", "height-to-length", "profile-fill"),
    HEIGHT("height-in-wheels", "height-to-length", "height-to-width", "wheelbase-to-height"),
    FRONT_OVERHANG("front-overhang-in-wheels", "front-overhang-share"),
    REAR_OVERHANG("rear-overhang-in-wheels", "rear-overhang-share"),
    CLEARANCE("clearance-in-wheels"),
    ROCKER("rocker-offset-in-wheels"),
    FRONT_ARCH(
            "arch-gap-front-in-wheels",
            "arch-offset-front-in-wheels",
            "arch-opening-front",
            "arch-centre-front-in-wheels"),
    REAR_ARCH(
            "arch-gap-rear-in-wheels", "arch-offset-rear-in-wheels", "arch-opening-rear", "arch-centre-rear-in-wheels"),
    SCREEN("screen-aim-in-wheels", "screen-angle"),
    BACKLIGHT("backlight-angle", "backlight-aim-in-wheels", "deck-length-in-wheels", "tail-height-in-wheels"),
    DASH(
            "dash-to-axle-in-wheels",
            "cowl-height-in-wheels",
            "bonnet-edge-height-in-wheels",
            "bonnet-share",
            "cabin-share"),
    FRONT_DOOR("front-door-gap-in-wheels"),
    REAR_DOOR("rear-door-lead-in-wheels"),
    TYRES("tyre-stagger", "sidewall-share", "rim-share", "rear-sidewall-share", "rear-rim-share"),
    BELT("belt-height-in-wheels", "glass-to-body", "belt-rise", "glass-area-share"),
    ROOF("roof-apex-position"),
    SEAT("seat-height-share", "h-point-position"),
    APPROACH("approach-angle"),
    DEPARTURE("departure-angle"),
    RAMP("ramp-angle"),
    /** Of two overhangs, neither of which need be out by itself: no line of the drawing is marked for it. */
    BALANCE("overhang-balance");

    private final List<String> measures;

    Part(String... measures) {
        this.measures = List.of(measures);
    }

    /** Whether a measure is of this part alone, and need not be named beside it. */
    boolean isOwn(String measureKey) {
        return measures.get(0).equals(measureKey);
    }

    /** The keys of the measures that speak of this part. */
    public List<String> measures() {
        return measures;
    }

    /** Every part that one of these measures speaks of; keys that no part has are passed over. */
    public static Set<Part> of(Collection<String> measureKeys) {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        for (Part part : values()) {
            if (part.measures.stream().anyMatch(measureKeys::contains)) {
                parts.add(part);
            }
        }
        return parts;
    }
}
