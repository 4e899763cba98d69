package studio.stancebook.dimension.reshaping;

import java.util.DoubleSummaryStatistics;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Readings;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** A package made of typical proportions, with lines that are bent to them. */
final class TypicalBody {

    /** Given by landmarks and lines as well: recorded only where those are not. */
    private static final Map<Dimension, Set<Landmark>> GIVEN_BY = Map.of(
            Dimension.ROCKER_HEIGHT, EnumSet.of(Landmark.ROCKER_FRONT, Landmark.ROCKER_REAR),
            Dimension.COWL_HEIGHT, EnumSet.of(Landmark.COWL),
            Dimension.DASH_TO_AXLE, EnumSet.of(Landmark.COWL),
            Dimension.SEAT_HEIGHT, EnumSet.of(Landmark.H_POINT),
            Dimension.SCREEN_ANGLE, EnumSet.of(Landmark.COWL, Landmark.SCREEN_TOP),
            Dimension.BACKLIGHT_ANGLE, EnumSet.of(Landmark.BACKLIGHT_TOP, Landmark.BACKLIGHT_BASE));

    private static final Set<Dimension> OF_UNDERBODY =
            EnumSet.of(Dimension.APPROACH_ANGLE, Dimension.DEPARTURE_ANGLE, Dimension.RAMP_ANGLE);

    private final Proportions typical;
    private final DimensionSet drawn;

    /** @param drawn a package whose lines are taken */
    TypicalBody(Proportions typical, DimensionSet drawn) {
        this.typical = typical;
        this.drawn = drawn;
    }

    DimensionSet on(TyreDesignation tyre, double wheelbaseMm) {
        double d = tyre.overallDiameterMm();
        LengthsAlong lengths = lengths(wheelbaseMm, d);
        Map<Landmark, Point> places = typical.placed(lengths, d);
        double height = Math.rint(typical.length(Dimension.OVERALL_HEIGHT, d));
        places.computeIfPresent(Landmark.ROOF_APEX, (l, at) -> Double.isNaN(height) ? at : new Point(at.x(), height));
        DimensionSet fitted = Reshaping.fitted(body(lengths, d), places);
        DimensionSetBuilder set = fitted.toBuilder().tyres(tyre);
        outline(fitted, lengths, height, d).ifPresent(line -> set.set(Polyline.OUTLINE, line));
        places.forEach((landmark, at) -> set.set(landmark, Math.rint(at.x()), Math.rint(at.z())));
        record(set, lengths, d, places);
        return set.build();
    }

    private LengthsAlong lengths(double wheelbaseMm, double d) {
        return new LengthsAlong(
                Math.rint(typical.length(Dimension.FRONT_OVERHANG, d)),
                wheelbaseMm > 0 ? wheelbaseMm : Math.rint(typical.length(Dimension.WHEELBASE, d)),
                Math.rint(typical.length(Dimension.REAR_OVERHANG, d)));
    }

    /** The landmarks and lines of the package drawn, stretched to typical lengths and heights. */
    private DimensionSet body(LengthsAlong to, double d) {
        double drawnD = drawn.tyreDiameter(Axle.FRONT).orElseThrow();
        DimensionSetBuilder lines = DimensionSet.builder().set(Dimension.WHEELBASE, to.wheelbase());
        drawn.landmarks().forEach((landmark, at) -> lines.set(landmark, at.x(), at.z()));
        drawn.polylines().forEach(lines::set);
        DimensionSet sized = lines.build();
        LengthsAlong from = LengthsAlong.of(new Readings(drawn));
        return BodyMap.moved(sized, from.stretchTo(to, drawnD, d), heights(drawnD, d), Quantum.of(sized));
    }

    /** The outline from nose to tail and up to the roof exactly, where bending it to its landmarks pushed it beyond. */
    private static Optional<List<Point>> outline(DimensionSet fitted, LengthsAlong to, double height, double d) {
        List<Point> line = fitted.points(Polyline.OUTLINE);
        if (line.isEmpty() || Double.isNaN(to.overall()) || Double.isNaN(height)) {
            return Optional.empty();
        }
        DoubleSummaryStatistics x = line.stream().mapToDouble(Point::x).summaryStatistics();
        double top = line.stream().mapToDouble(Point::z).max().orElseThrow();
        LengthsAlong from = new LengthsAlong(-x.getMin(), to.wheelbase(), x.getMax() - to.wheelbase());
        double belt = Belt.of(fitted, Math.min(top, height));
        Stretch up = Stretch.NONE.with(belt, belt).with(top, height);
        return Optional.of(BodyMap.moved(line, from.stretchTo(to, d, d), up, Quantum.of(fitted)));
    }

    private Stretch heights(double drawnD, double d) {
        Proportions own = Proportions.of(drawn).orElseThrow();
        double clearance = own.length(Dimension.GROUND_CLEARANCE, drawnD);
        double height = own.length(Dimension.OVERALL_HEIGHT, drawnD);
        Stretch up = Stretch.NONE.with(0, 0);
        double typicalClearance = Math.rint(typical.length(Dimension.GROUND_CLEARANCE, d));
        if (!Double.isNaN(clearance) && !Double.isNaN(typicalClearance)) {
            up = up.with(clearance, typicalClearance);
        }
        double typicalHeight = Math.rint(typical.length(Dimension.OVERALL_HEIGHT, d));
        return Double.isNaN(height) || Double.isNaN(typicalHeight)
                ? up.with(drawnD * 3, d * 3)
                : up.with(height, typicalHeight);
    }

    private void record(DimensionSetBuilder set, LengthsAlong along, double d, Map<Landmark, Point> places) {
        boolean underbody = !drawn.points(Polyline.UNDERBODY).isEmpty();
        typical.lengths().forEach((dimension, share) -> {
            boolean given = GIVEN_BY.containsKey(dimension) && places.keySet().containsAll(GIVEN_BY.get(dimension));
            if (!given && !(underbody && OF_UNDERBODY.contains(dimension))) {
                set.set(dimension, rounded(dimension, share, d));
            }
        });
        set.set(Dimension.WHEELBASE, along.wheelbase());
        if (!Double.isNaN(along.overall())) {
            set.set(Dimension.OVERALL_LENGTH, along.overall());
        }
    }

    private static double rounded(Dimension dimension, double share, double d) {
        return dimension.unit() == Unit.MM ? Math.rint(share * d) : Math.rint(share * 10) / 10;
    }
}
