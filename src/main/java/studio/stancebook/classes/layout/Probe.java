package studio.stancebook.classes.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.MeasureValue;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.Subject;
import studio.stancebook.tyre.TyreDesignation;

/**
 * Invented side views on which every measure is tried, to notice when a list of measures computes other numbers than
 * those that were kept.
 */
final class Probe {

    private static final List<DimensionSet> SIDE_VIEWS = List.of(drawn(), typed(), inPart());

    private Probe() {}

    /** A text that differs as soon as a measure of the list gives another value, to nine digits. */
    static String trace(MeasureRegistry registry) {
        List<Subject> subjects = SIDE_VIEWS.stream().map(Subject::new).toList();
        StringBuilder trace = new StringBuilder();
        for (Measure measure : registry.all()) {
            trace.append(measure.key());
            subjects.forEach(subject -> trace.append(' ').append(text(measure.of(subject))));
            trace.append('\n');
        }
        for (Dimension dimension : Dimension.values()) {
            trace.append(dimension.key()).append('\n');
        }
        return trace.toString();
    }

    private static String text(MeasureValue value) {
        return value instanceof Measured measured ? String.format(Locale.ROOT, "%.8e", measured.value()) : "-";
    }

    private static DimensionSet drawn() {
        DimensionSetBuilder set = DimensionSet.builder()
                .tyre(Axle.FRONT, TyreDesignation.parse("235/55R18"))
                .tyre(Axle.REAR, TyreDesignation.parse("255/50R18"))
                .set(Dimension.WHEELBASE, 2741)
                .set(Dimension.FRONT_OVERHANG, 903)
                .set(Dimension.REAR_OVERHANG, 1017)
                .set(Dimension.OVERALL_WIDTH, 1871)
                .set(Dimension.FRONT_TRACK, 1593)
                .set(Dimension.REAR_TRACK, 1607)
                .set(Dimension.GROUND_CLEARANCE, 187);
        double[][] points = {
            {461, 1013},
            {1153, 1541},
            {1511, 1583},
            {2711, 1487},
            {3307, 1129},
            {3701, 1063},
            {703, 967},
            {3109, 1051},
            {421, 307},
            {2293, 317},
            {3, 761},
            {2743, 773},
            {1409, 643},
            {577, 311},
            {2203, 313}
        };
        for (Landmark landmark : Landmark.values()) {
            double[] point = points[landmark.ordinal() % points.length];
            set.set(landmark, point[0], point[1]);
        }
        set.set(Polyline.UNDERBODY, line(-903, 503, -613, 251, 409, 191, 2311, 197, 3301, 293, 3758, 557));
        set.set(Polyline.OUTLINE, line(-903, 503, -811, 809, 461, 1013, 1153, 1541, 2711, 1487, 3701, 1063, 3758, 557));
        set.set(Polyline.DAYLIGHT_OPENING, line(703, 967, 1207, 1499, 2687, 1451, 3109, 1051));
        return set.build();
    }

    /** As a specification sheet gives it: scalars and angles, no point of the side view. */
    private static DimensionSet typed() {
        DimensionSetBuilder set = DimensionSet.builder();
        double[] lengths = {2557, 4211, 787, 867, 1741, 1451, 1487, 1493, 163, 181, 179, 269, 557, 233, 947, 389};
        for (Dimension dimension : Dimension.values()) {
            switch (dimension.unit()) {
                case MM -> set.set(dimension, lengths[dimension.ordinal() % lengths.length]);
                case DEG -> set.set(dimension, 17 + dimension.ordinal());
                case KG, COUNT -> set.set(dimension, 2);
            }
        }
        return set.set(Dimension.FRONT_TYRE_DIAMETER, 641)
                .set(Dimension.REAR_TYRE_DIAMETER, 653)
                .set(Dimension.FRONT_RIM_DIAMETER, 406)
                .set(Dimension.REAR_RIM_DIAMETER, 432)
                .set(Dimension.FRONT_LOADED_RADIUS, 307)
                .set(Dimension.REAR_LOADED_RADIUS, 311)
                .build();
    }

    /** A floor without nose and tail, and an approach angle typed beside it. */
    private static DimensionSet inPart() {
        return drawn().toBuilder()
                .without(Dimension.GROUND_CLEARANCE.key())
                .set(Polyline.UNDERBODY, line(503, 229, 2207, 233))
                .set(Dimension.APPROACH_ANGLE, 19)
                .build();
    }

    private static List<Point> line(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return points;
    }
}
