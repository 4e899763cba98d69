package studio.stancebook.demo;

import java.util.List;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;

/** Writes down an invented vehicle as a studio would record it: whole mm, sums that close, now and then a gap. */
final class DimensionSampler {

    private final Skeleton s;
    private final OutlineGenerator pencil;
    private final Chance chance;
    private final DimensionSetBuilder set = DimensionSet.builder();

    DimensionSampler(Skeleton skeleton, Chance chance) {
        this.s = skeleton;
        this.pencil = new OutlineGenerator(skeleton);
        this.chance = chance;
    }

    /** @param outlined whether the outline has been taken off a drawing as well */
    DimensionSet record(boolean outlined) {
        set.origin(chance.happens(0.25) ? Origin.MEASURED : Origin.DRAWING);
        set.tyre(Axle.FRONT, s.tyres().front()).tyre(Axle.REAR, s.tyres().rear());
        lengths();
        heights();
        body();
        doors();
        set.set(Polyline.UNDERBODY, pencil.underbody());
        boolean glazed = chance.happens(0.7);
        if (outlined) {
            set.set(Polyline.OUTLINE, pencil.outline());
            if (glazed) {
                set.set(Polyline.DAYLIGHT_OPENING, pencil.glass());
            }
        }
        return set.build();
    }

    private static double whole(double mm) {
        return StrictMath.rint(mm);
    }

    private void put(Dimension dimension, double value) {
        set.set(dimension, whole(value));
    }

    private void put(Landmark landmark, double x, double z) {
        set.set(landmark, whole(x), whole(z));
    }

    private void put(Landmark landmark, Point point) {
        put(landmark, point.x(), point.z());
    }

    private void lengths() {
        double wheelbase = whole(s.wheelbase());
        double front = whole(s.frontOverhang());
        double rear = whole(s.rearOverhang());
        set.set(Dimension.WHEELBASE, wheelbase);
        set.set(Dimension.FRONT_OVERHANG, front);
        set.set(Dimension.REAR_OVERHANG, rear);
        set.set(Dimension.OVERALL_LENGTH, front + wheelbase + rear);
        double width = whole(s.archetype().trait("widthMm").drawn(chance, s.character()));
        double inset = s.archetype().trait("trackInsetMm").drawn(chance, s.character());
        set.set(Dimension.OVERALL_WIDTH, width);
        put(Dimension.FRONT_TRACK, width - inset);
        put(Dimension.REAR_TRACK, width - inset - 6 + 10 * chance.bell());
        double kerb = s.archetype().trait("kerbKg").drawn(chance, s.character());
        set.set(Dimension.KERB_MASS, 5 * StrictMath.rint(kerb / 5));
    }

    private void heights() {
        put(Dimension.OVERALL_HEIGHT, s.height());
        List<Point> under = pencil.underbody();
        double lowest = under.stream()
                .filter(point -> point.x() > 0 && point.x() < s.wheelbase())
                .mapToDouble(Point::z)
                .min()
                .orElse(s.clearance());
        set.set(Dimension.GROUND_CLEARANCE, lowest);
        boolean rugged = s.archetype().segment().equals("off-road-suv")
                || s.archetype().segment().equals("pick-up");
        if (rugged) {
            set.set(Dimension.FRONT_AXLE_CLEARANCE, lowest - 12);
            set.set(Dimension.REAR_AXLE_CLEARANCE, lowest - 20);
            set.set(Dimension.DRIVEN_AXLES, 2);
        }
    }

    private void body() {
        put(Landmark.COWL, s.cowl());
        put(Landmark.BONNET_EDGE, pencil.bonnetEdge());
        put(Landmark.SCREEN_TOP, s.screenTop());
        put(Landmark.ROOF_APEX, s.apex());
        put(Landmark.BACKLIGHT_TOP, s.roofEnd());
        put(Landmark.BACKLIGHT_BASE, s.backlightBase());
        put(Landmark.TAIL_EDGE, s.tailEdge());
        double beltFront = s.cowl().x() + 0.22 * s.d();
        double beltRear = pencil.beltEnd();
        put(Landmark.BELT_FRONT, beltFront, pencil.beltAt(beltFront));
        put(Landmark.BELT_REAR, beltRear, pencil.beltAt(beltRear));
        double seat = s.archetype().trait("seatHeight").drawn(chance, s.character()) * s.d();
        double hipX = s.cowl().x() + (1.18 + 0.05 * chance.bell()) * 800;
        if (chance.happens(0.8)) {
            put(Landmark.H_POINT, hipX, seat);
        }
    }

    private void doors() {
        double opening = s.d() / 2 + s.archGap();
        double rake = 0.012 * s.d() * (1 + chance.bell());
        double from = opening + 0.10 * s.d();
        double to = s.wheelbase() - opening - 0.08 * s.d();
        put(Landmark.ROCKER_FRONT, from, s.rocker() - rake / 2);
        put(Landmark.ROCKER_REAR, to, s.rocker() + rake / 2);
        double gap = 0.02 * chance.bell();
        put(Landmark.ARCH_FRONT_TOP, 0, s.archTop() + gap * s.d());
        put(Landmark.ARCH_REAR_TOP, s.wheelbase(), s.archTop() + gap * 0.6 * s.d());
        archEdges(opening);
        double cut = from + (0.04 + 0.06 * (1 + chance.bell())) * s.d();
        put(Landmark.FRONT_DOOR_CUT, cut, s.rocker() - rake / 2);
        put(Landmark.REAR_DOOR_CUT, rearCut(cut, to), s.rocker() + rake / 2);
    }

    /** The openings lie behind the wheels of some vehicles of a class and ahead of those of others. */
    private void archEdges(double halfOpening) {
        double behind = 0.03 * s.d() * s.character();
        put(Landmark.ARCH_FRONT_FORE, behind - halfOpening, s.centre());
        put(Landmark.ARCH_FRONT_AFT, behind + halfOpening, s.centre());
        put(Landmark.ARCH_REAR_FORE, s.wheelbase() + behind - halfOpening, s.centre());
        put(Landmark.ARCH_REAR_AFT, s.wheelbase() + behind + halfOpening, s.centre());
    }

    private double rearCut(double frontCut, double sillEnd) {
        return switch (s.archetype().segment()) {
            case "sports-car" -> Math.min(frontCut + 1.78 * s.d(), sillEnd - 0.05 * s.d());
            case "van" -> frontCut + (1.55 + 0.1 * chance.bell()) * s.d();
            case "pick-up" -> Math.min(s.backlightBase().x() - 0.10 * s.d(), sillEnd - 0.05 * s.d());
            default -> sillEnd - (0.02 + 0.03 * (1 + chance.bell())) * s.d();
        };
    }
}
