package studio.stancebook.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** An invented class of saloons with drawn side views, the same every time. */
public final class InventedFleet {

    private static final List<String> NAMES = List.of(
            "Alder", "Birch", "Cedar", "Dogwood", "Elder", "Fir", "Gorse", "Hazel", "Ivy", "Juniper", "Larch", "Maple");

    private final Random random = new Random(11);

    /** One package of each name. */
    public static List<PackageDraft> of(String segment) {
        InventedFleet fleet = new InventedFleet();
        List<PackageDraft> drafts = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++) {
            drafts.add(new PackageDraft(NAMES.get(i), segment, 2012 + i, Origin.DRAWING, fleet.saloon()));
        }
        return drafts;
    }

    private double about(double value, double give) {
        return Math.rint(value + give * (2 * random.nextDouble() - 1));
    }

    private DimensionSet saloon() {
        double wheelbase = about(2780, 90);
        double nose = about(880, 40);
        double tail = about(1060, 60);
        double height = about(1455, 35);
        double cowl = about(430, 40);
        DimensionSetBuilder set = DimensionSet.builder()
                .tyres(TyreDesignation.parse(random.nextBoolean() ? "225/45R18" : "235/50R18"))
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Dimension.FRONT_OVERHANG, nose)
                .set(Dimension.REAR_OVERHANG, tail)
                .set(Dimension.OVERALL_HEIGHT, height)
                .set(Dimension.OVERALL_WIDTH, about(1850, 30))
                .set(Dimension.FRONT_TRACK, about(1585, 20))
                .set(Dimension.REAR_TRACK, about(1590, 20))
                .set(Dimension.GROUND_CLEARANCE, about(140, 10));
        set.set(Landmark.COWL, cowl, about(1010, 15))
                .set(Landmark.SCREEN_TOP, cowl + about(700, 30), height - 60)
                .set(Landmark.ROOF_APEX, cowl + about(1000, 40), height)
                .set(Landmark.BACKLIGHT_TOP, wheelbase - about(450, 40), height - 90)
                .set(Landmark.BACKLIGHT_BASE, wheelbase + about(220, 40), about(1090, 20))
                .set(Landmark.BELT_FRONT, cowl + 150, about(980, 10))
                .set(Landmark.BELT_REAR, wheelbase - 100, about(1040, 15))
                .set(Landmark.ROCKER_FRONT, 450, about(245, 10))
                .set(Landmark.ROCKER_REAR, wheelbase - 450, about(255, 10))
                .set(Landmark.FRONT_DOOR_CUT, about(520, 30), 260)
                .set(Landmark.ARCH_FRONT_TOP, 0, about(735, 10))
                .set(Landmark.ARCH_REAR_TOP, wheelbase, about(730, 10));
        return set.set(
                        Polyline.UNDERBODY,
                        List.of(
                                new Point(-nose, 430),
                                new Point(-nose + 150, 210),
                                new Point(450, 150),
                                new Point(wheelbase - 400, 155),
                                new Point(wheelbase + tail - 120, 300),
                                new Point(wheelbase + tail, 480)))
                .build();
    }
}
