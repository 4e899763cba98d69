package studio.stancebook.dimension.reshaping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Reading;
import studio.stancebook.dimension.Readings;
import studio.stancebook.geometry.Point;

/**
 * One change of a side view with all that follows it. Along the vehicle the body is stretched between the wheels and shifted
 * behind them, wheel openings stay about their wheels; a roof is raised from the belt line up; an underbody is raised at its
 * lowest part; lines run on past the landmarks that moved; lengths still add up; a dimension that landmarks give as well goes
 * with them. What follows is rounded to whole mm. Studio decision 0107.
 */
public final class Reshaping {

    /** The lengths along the vehicle: the overall one is the sum of the others. */
    public static final Set<Dimension> ADDING_UP = Collections.unmodifiableSet(EnumSet.of(
            Dimension.WHEELBASE, Dimension.FRONT_OVERHANG, Dimension.REAR_OVERHANG, Dimension.OVERALL_LENGTH));

    /** How far a landmark may be from a line to hold it, in tyre diameters. */
    private static final double REACH_OF_OUTLINE = 0.06;

    private static final double REACH_OF_GLASS = 0.3;

    private static final Set<Landmark> ON_THE_OUTLINE = EnumSet.of(
            Landmark.COWL,
            Landmark.SCREEN_TOP,
            Landmark.ROOF_APEX,
            Landmark.BACKLIGHT_TOP,
            Landmark.BACKLIGHT_BASE,
            Landmark.TAIL_EDGE,
            Landmark.BONNET_EDGE);

    private static final Set<Landmark> ABOUT_THE_GLASS = EnumSet.of(
            Landmark.SCREEN_TOP, Landmark.ROOF_APEX, Landmark.BACKLIGHT_TOP, Landmark.BELT_FRONT, Landmark.BELT_REAR);

    private static final Set<Landmark> ON_THE_ROCKER =
            EnumSet.of(Landmark.ROCKER_FRONT, Landmark.ROCKER_REAR, Landmark.FRONT_DOOR_CUT, Landmark.REAR_DOOR_CUT);

    /** Rounding apart. */
    private static final double ADDS_UP_BY_LENGTH = 0.0005;

    private final DimensionSet before;
    private final Readings readings;
    private final Quantum quantum;

    private Reshaping(DimensionSet before) {
        this.before = before;
        this.readings = new Readings(before);
        this.quantum = Quantum.of(before);
    }

    /**
     * A set with one dimension changed.
     *
     * @param value of the dimension, in mm or degrees
     * @param givesWay what takes up a change of a length along the vehicle; the one that is changed itself counts as {@link
     *     GivesWay#LENGTH}, and a change of the overall length goes to the rear overhang unless the front one is named
     */
    public static DimensionSet with(DimensionSet before, Dimension dimension, double value, GivesWay givesWay) {
        return new Reshaping(before).with(dimension, value, givesWay);
    }

    /** A set with one landmark moved, or recorded where it was not. */
    public static DimensionSet with(DimensionSet before, Landmark landmark, Point to) {
        if (!before.landmarks().containsKey(landmark)) {
            return before.toBuilder().set(landmark, to.x(), to.z()).build();
        }
        DimensionSet raised = landmark == Landmark.ROOF_APEX ? new Reshaping(before).raised(to.z()) : before;
        return new Reshaping(raised).moved(Map.of(landmark, to));
    }

    /** A set with a whole line shifted. */
    public static DimensionSet shifted(DimensionSet before, Polyline line, double byX, double byZ) {
        List<Point> points = before.points(line).stream()
                .map(at -> new Point(at.x() + byX, at.z() + byZ))
                .toList();
        return new Reshaping(before).agreed(before.toBuilder().set(line, points).build());
    }

    /**
     * A set as typed over another one: where one length along the vehicle was changed alone, so that they no longer add up, with
     * what follows it; else as it is.
     */
    public static DimensionSet typedOver(DimensionSet before, DimensionSet typed, GivesWay givesWay) {
        List<Dimension> changed = ADDING_UP.stream()
                .filter(dimension -> !typed.scalar(dimension).equals(before.scalar(dimension)))
                .toList();
        boolean complete = typed.scalars().keySet().containsAll(ADDING_UP) && addsUp(before);
        if (changed.size() != 1 || !complete || addsUp(typed)) {
            return typed;
        }
        Dimension dimension = changed.get(0);
        double was = before.scalar(dimension).orElseThrow();
        DimensionSet unchanged = typed.toBuilder().set(dimension, was).build();
        return with(unchanged, dimension, typed.scalar(dimension).orElseThrow(), givesWay);
    }

    private static boolean addsUp(DimensionSet set) {
        double sum = set.scalars().getOrDefault(Dimension.FRONT_OVERHANG, Double.NaN)
                + set.scalars().getOrDefault(Dimension.WHEELBASE, Double.NaN)
                + set.scalars().getOrDefault(Dimension.REAR_OVERHANG, Double.NaN);
        double overall = set.scalars().getOrDefault(Dimension.OVERALL_LENGTH, Double.NaN);
        return Math.abs(sum - overall) <= ADDS_UP_BY_LENGTH * overall;
    }

    private DimensionSet with(Dimension dimension, double value, GivesWay givesWay) {
        return switch (dimension) {
            case WHEELBASE, FRONT_OVERHANG, REAR_OVERHANG, OVERALL_LENGTH ->
                LengthsAlong.of(readings)
                        .with(dimension, value, givesWay)
                        .map(to -> stretched(to, dimension, value))
                        .orElseGet(() -> plainly(dimension, value));
            case OVERALL_HEIGHT -> raised(value);
            case GROUND_CLEARANCE -> underbodyRaised(value);
            case ROCKER_HEIGHT -> rockerRaised(value);
            case COWL_HEIGHT -> point(Landmark.COWL, dimension, value, false);
            case DASH_TO_AXLE -> point(Landmark.COWL, dimension, value, true);
            case SEAT_HEIGHT -> point(Landmark.H_POINT, dimension, value, false);
            case SCREEN_ANGLE -> tilted(Landmark.COWL, Landmark.SCREEN_TOP, 1, dimension, value);
            case BACKLIGHT_ANGLE -> tilted(Landmark.BACKLIGHT_BASE, Landmark.BACKLIGHT_TOP, -1, dimension, value);
            default -> plainly(dimension, value);
        };
    }

    private DimensionSet plainly(Dimension dimension, double value) {
        return before.toBuilder().set(dimension, value).build();
    }

    private double tyre() {
        return readings.find(Reading.FRONT_TYRE_DIAMETER)
                .or(() -> readings.find(Reading.REAR_TYRE_DIAMETER))
                .map(estimate -> estimate.value())
                .orElse(readings.get(Reading.WHEELBASE).value() / 4);
    }

    private DimensionSet stretched(LengthsAlong to, Dimension dimension, double value) {
        LengthsAlong from = LengthsAlong.of(readings);
        DimensionSetBuilder builder = before.toBuilder().set(dimension, value);
        to.recordedIn(before).forEach(builder::set);
        return bodyMoved(builder.build(), from.stretchTo(to, tyre(), tyre()), Stretch.NONE);
    }

    /** What gives the overall height goes to {@code height}; what lies above the belt line goes with it in proportion. */
    private DimensionSet raised(double height) {
        double top = readings.find(Reading.OVERALL_HEIGHT).map(e -> e.value()).orElse(height);
        DimensionSet set = before.scalar(Dimension.OVERALL_HEIGHT).isPresent()
                        || before.landmark(Landmark.ROOF_APEX).isEmpty()
                ? plainly(Dimension.OVERALL_HEIGHT, height)
                : before;
        double belt = Belt.of(before, top);
        return bodyMoved(set, Stretch.NONE, Stretch.NONE.with(belt, belt).with(top, height));
    }

    private DimensionSet underbodyRaised(double clearance) {
        List<Point> underbody = before.points(Polyline.UNDERBODY);
        DimensionSet set = plainly(Dimension.GROUND_CLEARANCE, clearance);
        if (underbody.isEmpty()) {
            return set;
        }
        double low = underbody.stream().mapToDouble(Point::z).min().orElseThrow();
        double high = underbody.stream().mapToDouble(Point::z).max().orElseThrow();
        Stretch up = Stretch.NONE.with(low, clearance).with(high, Math.max(high, clearance + 1e-6));
        List<Point> moved = underbody.stream()
                .map(point -> quantum.ofLine(new Point(point.x(), up.of(point.z()))))
                .toList();
        return agreed(set.toBuilder().set(Polyline.UNDERBODY, moved).build());
    }

    private DimensionSet rockerRaised(double value) {
        DimensionSet set = before.scalar(Dimension.ROCKER_HEIGHT).isPresent()
                        || before.landmark(Landmark.ROCKER_FRONT).isEmpty()
                ? plainly(Dimension.ROCKER_HEIGHT, value)
                : before;
        double by =
                value - readings.find(Reading.ROCKER_HEIGHT).map(e -> e.value()).orElse(value);
        DimensionSetBuilder builder = set.toBuilder();
        for (Landmark landmark : ON_THE_ROCKER) {
            before.landmark(landmark).ifPresent(at -> builder.set(landmark, at.x(), at.z() + by));
        }
        return agreed(builder.build());
    }

    private DimensionSet point(Landmark landmark, Dimension dimension, double value, boolean isX) {
        Point at = before.landmark(landmark).orElse(null);
        DimensionSet set = before.scalar(dimension).isPresent() || at == null ? plainly(dimension, value) : before;
        return at == null
                ? set
                : new Reshaping(set).moved(Map.of(landmark, isX ? new Point(value, at.z()) : new Point(at.x(), value)));
    }

    /** The upper end of a line of glass moves along the vehicle until the line leans as asked. */
    private DimensionSet tilted(Landmark base, Landmark top, int sense, Dimension dimension, double degrees) {
        Point from = before.landmark(base).orElse(null);
        Point to = before.landmark(top).orElse(null);
        DimensionSet set = before.scalar(dimension).isPresent() || from == null || to == null
                ? plainly(dimension, degrees)
                : before;
        if (from == null || to == null) {
            return set;
        }
        double run = (to.z() - from.z()) / Math.tan(Math.toRadians(degrees));
        return new Reshaping(set).moved(Map.of(top, quantum.ofLandmark(new Point(from.x() + sense * run, to.z()))));
    }

    /** Landmarks moved, with the lines that run past them. */
    private DimensionSet moved(Map<Landmark, Point> places) {
        return lines(before, places, before.toBuilder());
    }

    /** All landmarks and lines moved by a map of the body. */
    private DimensionSet bodyMoved(DimensionSet set, Stretch along, Stretch up) {
        return agreed(BodyMap.moved(set, along, up, quantum));
    }

    private DimensionSet lines(DimensionSet from, Map<Landmark, Point> places, DimensionSetBuilder builder) {
        places.forEach((landmark, at) -> builder.set(landmark, at.x(), at.z()));
        follow(from, places, ON_THE_OUTLINE, Polyline.OUTLINE, REACH_OF_OUTLINE, builder);
        follow(from, places, ABOUT_THE_GLASS, Polyline.DAYLIGHT_OPENING, REACH_OF_GLASS, builder);
        return agreed(builder.build());
    }

    private void follow(
            DimensionSet from,
            Map<Landmark, Point> places,
            Set<Landmark> holding,
            Polyline polyline,
            double reach,
            DimensionSetBuilder builder) {
        List<Point> line = from.points(polyline);
        if (line.isEmpty()) {
            return;
        }
        Map<Landmark, Point> holders = new EnumMap<>(from.landmarks());
        holders.keySet().retainAll(holding);
        List<LandmarkShift> shifts = new ArrayList<>();
        holders.forEach((landmark, at) -> shifts.add(new LandmarkShift(at, places.getOrDefault(landmark, at))));
        List<Point> after =
                new FollowingLine(line, polyline == Polyline.DAYLIGHT_OPENING).after(shifts, reach * tyre());
        if (after != line) {
            builder.set(polyline, after.stream().map(quantum::ofLine).toList());
        }
    }

    /** To a body of other proportions: a map of the whole, then each landmark to its place, the lines with it. */
    static DimensionSet fitted(DimensionSet mapped, Map<Landmark, Point> places) {
        Reshaping reshaping = new Reshaping(mapped);
        Map<Landmark, Point> known = new EnumMap<>(Landmark.class);
        places.forEach((landmark, at) -> {
            if (mapped.landmarks().containsKey(landmark)) {
                known.put(landmark, reshaping.quantum.ofLandmark(at));
            }
        });
        return reshaping.lines(mapped, known, mapped.toBuilder());
    }

    private DimensionSet agreed(DimensionSet after) {
        return new SecondReadings(before, after, quantum).following();
    }
}
