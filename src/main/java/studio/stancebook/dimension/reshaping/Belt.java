package studio.stancebook.dimension.reshaping;

import java.util.List;
import java.util.OptionalDouble;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.geometry.Point;

/** The belt line as the height above which a roof is stretched. */
final class Belt {

    /** Where nothing says where it is: a share of the overall height. Common practice, no source. */
    private static final double USUAL_SHARE = 0.62;

    private static final double MOST_SHARE = 0.9;

    private Belt() {}

    static double of(DimensionSet set, double overallHeight) {
        OptionalDouble belt = List.of(Landmark.BELT_FRONT, Landmark.BELT_REAR).stream()
                .flatMap(landmark -> set.landmark(landmark).stream())
                .mapToDouble(Point::z)
                .max();
        return Math.min(belt.orElse(USUAL_SHARE * overallHeight), MOST_SHARE * overallHeight);
    }
}
