package studio.stancebook.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Edition;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.Interval;
import studio.stancebook.tyre.TyreDesignation;

/** Invented dimension sets for tests. */
public final class Invented {

    private static final double WHEELBASE = 2590.7999999999997;

    private Invented() {}

    /** A set with a value of every kind, some with long decimals, uncertainties and origins of their own. */
    public static DimensionSet everything(Origin origin) {
        Random random = new Random(11);
        DimensionSetBuilder set = DimensionSet.builder()
                .origin(origin)
                .edition(Edition.J1100_2009)
                .tyre(Axle.FRONT, TyreDesignation.parse("265/70R17 113S"))
                .tyre(Axle.REAR, TyreDesignation.parse("35x12.50R17LT"));
        for (Dimension dimension : Dimension.values()) {
            double least = dimension.range().lower();
            double most = dimension.range().upper();
            double value = least + (most - least) * (0.2 + 0.1 * random.nextDouble());
            set.set(dimension, dimension.unit() == Unit.COUNT ? 2 : value);
        }
        set.set(Dimension.WHEELBASE, WHEELBASE).set(Dimension.OVERALL_LENGTH, 4800);
        for (Landmark landmark : Landmark.values()) {
            set.set(landmark, within(landmark.xShares(), random), within(landmark.zShares(), random));
        }
        set.set(Polyline.UNDERBODY, List.of(new Point(-850, 560), new Point(-600.1, 330), new Point(3000, 1e-3)));
        set.set(Polyline.OUTLINE, outline(random, 5000));
        set.set(Polyline.DAYLIGHT_OPENING, outline(random, 3));
        return set.uncertainty("wheelbase", 0.1)
                .uncertainty("cowl", 12.25)
                .uncertainty("frontTyre", 1e-3)
                .origin("overallLength", Origin.DERIVED)
                .origin("outline", Origin.DRAWING)
                .build();
    }

    /** At a plausible place for the wheelbase of {@link #everything}. */
    private static double within(Interval shares, Random random) {
        return WHEELBASE * (shares.lower() + shares.width() * (0.1 + 0.8 * random.nextDouble()));
    }

    /** A sketch without a dimension. */
    public static DimensionSet sketch(Origin origin) {
        return DimensionSet.builder()
                .origin(origin)
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 3.25)
                .set(Dimension.FRONT_TYRE_DIAMETER, 0.8125)
                .set(Landmark.COWL, 0.5, 4.0 / 3)
                .build();
    }

    /** A set with a wheelbase only. */
    public static DimensionSet least(Origin origin, double wheelbase) {
        return DimensionSet.builder()
                .origin(origin)
                .set(Dimension.WHEELBASE, wheelbase)
                .build();
    }

    private static List<Point> outline(Random random, int points) {
        List<Point> line = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            line.add(new Point(-850 + i * 0.9 + random.nextDouble(), 300 + random.nextDouble() * 1000));
        }
        return line;
    }
}
