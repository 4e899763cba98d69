package studio.stancebook.demo;

import studio.stancebook.geometry.Point;

/**
 * The hard points of one invented vehicle, mm and degrees, from which everything else is taken.
 *
 * @param d mean tyre diameter
 * @param centre mean wheel centre height of the free tyre
 */
record Skeleton(
        Archetype archetype,
        Fitment tyres,
        double character,
        double d,
        double centre,
        double wheelbase,
        double frontOverhang,
        double rearOverhang,
        double height,
        double rocker,
        double screenDeg,
        double backlightDeg,
        double clearance,
        double approachDeg,
        double departureDeg,
        double archGap,
        double beltDeg,
        Point cowl,
        Point screenTop,
        Point apex,
        Point roofEnd,
        Point backlightBase,
        Point tailEdge,
        double noseHeight,
        double noseRake) {

    /** Draws one vehicle of a class; some drafts do not stand together, see {@link #standsTogether}. */
    static Skeleton drawn(Archetype type, Fitment tyres, Chance chance) {
        double character = chance.bell();
        double d = tyres.diameter();
        Draft draft = new Draft(type, chance, character, d);
        double centre = d / 2;
        double wheelbase = draft.wheels("wheelbase");
        double front = draft.wheels("frontOverhang");
        double rear = draft.wheels("rearOverhang");
        double height = draft.wheels("height");
        double rocker = centre + draft.wheels("rockerOffset");
        double screenDeg = draft.plain("screenDeg");
        double aim = centre + draft.wheels("aim");
        double cowlZ = draft.wheels("cowlHeight");
        Point cowl = new Point((cowlZ - aim) / tan(screenDeg), cowlZ);
        double headerZ = height - draft.wheels("headerDrop");
        Point screenTop = new Point(cowl.x() + (headerZ - cowlZ) / tan(screenDeg), headerZ);
        Point apex = new Point(wheelbase * draft.plain("apex"), height);
        Point tail = new Point(wheelbase + rear - draft.wheels("tailInset"), draft.wheels("tailHeight"));
        Point base = new Point(tail.x() - draft.wheels("deckLength"), tail.z() + draft.wheels("deckRise"));
        double backlightDeg = draft.plain("backlightDeg");
        double roofEndZ = height - draft.wheels("roofEndDrop");
        Point roofEnd = new Point(base.x() - (roofEndZ - base.z()) / tan(backlightDeg), roofEndZ);
        return new Skeleton(
                type,
                tyres,
                character,
                d,
                centre,
                wheelbase,
                front,
                rear,
                height,
                rocker,
                screenDeg,
                backlightDeg,
                draft.wheels("clearance"),
                draft.plain("approachDeg"),
                draft.plain("departureDeg"),
                draft.wheels("archGap"),
                draft.plain("beltDeg"),
                cowl,
                screenTop,
                apex,
                roofEnd,
                base,
                tail,
                draft.wheels("noseHeight"),
                draft.wheels("noseRake"));
    }

    private static double tan(double degrees) {
        return StrictMath.tan(StrictMath.toRadians(degrees));
    }

    /** Draws the traits of one vehicle, all tied to its character. */
    private record Draft(Archetype type, Chance chance, double character, double d) {

        double plain(String trait) {
            return type.trait(trait).drawn(chance, character);
        }

        double wheels(String trait) {
            return plain(trait) * d;
        }
    }

    /**
     * True when the hard points follow each other as on a vehicle: the roof runs from the screen over the apex to the
     * backlight, the bonnet clears the wheel opening, the rocker lies over the underbody.
     */
    boolean standsTogether() {
        boolean roof = screenTop.x() + 0.33 * d < apex.x()
                && apex.x() + 0.35 * d < roofEnd.x()
                && roofEnd.x() < backlightBase.x()
                && roofEnd.z() > backlightBase.z() + 0.2 * d;
        boolean bonnet =
                cowl.x() > -0.3 * d && bonnetOverWheel() > archTop() + 0.05 * d && cowl.z() > noseHeight + 0.06 * d;
        boolean low = rocker > clearance + 0.02 * d;
        boolean tailHigh = tailEdge.z() > archTop() + 0.08 * d;
        return roof && bonnet && low && tailHigh;
    }

    /** The height of the bonnet over the front wheel centre, taken straight from its front edge to the cowl. */
    private double bonnetOverWheel() {
        double edge = noseRake + 0.14 * d - frontOverhang;
        return noseHeight + (cowl.z() - noseHeight) * Math.min(1, -edge / (cowl.x() - edge));
    }

    /** The top of the wheel openings. */
    double archTop() {
        return d + archGap;
    }

    double tailX() {
        return wheelbase + rearOverhang;
    }
}
