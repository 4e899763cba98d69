package studio.stancebook.band;

import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.measure.Sketches;

/**
 * Three cars laid out as the trade teaches it (common practice, no source), in tyre diameters where it counts in tyre
 * diameters, all measured on a model, whose tyres do not give.
 */
final class TextbookCars {

    private TextbookCars() {}

    static DimensionSet of(VehicleType type) {
        return switch (type) {
            case SALOON -> saloon();
            case CROSSOVER -> crossover();
            case OFF_ROAD -> offRoad();
        };
    }

    /** Five wheels, two tyres high, rocker well below the wheel centre, screen line well above the front tyre. */
    private static DimensionSet saloon() {
        double d = 680;
        DimensionSetBuilder car = wheels(d, 457, 4, 2.02);
        return body(car, d, 4700, -0.18, 0.035)
                .set(Landmark.COWL, 350, 985)
                .set(Landmark.SCREEN_TOP, 350 + 700, 985 + 700 * slope(350, 985, d, 0.68))
                .set(Polyline.UNDERBODY, Sketches.points(1, -850, 200, 0, 160, 2720, 170, 3820, 270))
                .build();
    }

    /** Four and three quarters, slightly over two tyres high, rocker slightly below, screen line at the tyre's top. */
    private static DimensionSet crossover() {
        double d = 720;
        DimensionSetBuilder car = wheels(d, 432, 3.75, 2.19);
        return body(car, d, 4480, -0.08, 0.077)
                .set(Landmark.COWL, 450, 1050)
                .set(Landmark.SCREEN_TOP, 450 + 600, 1050 + 600 * slope(450, 1050, d, 0.5))
                .set(Polyline.UNDERBODY, Sketches.points(1, -830, 310, 0, 200, 2700, 210, 3600, 400))
                .build();
    }

    /** Four and a half, 2 3/8 tyres high, rocker and screen line at the wheel centre, shut lines close to the wheels. */
    private static DimensionSet offRoad() {
        double d = 800;
        DimensionSetBuilder car = wheels(d, 432, 3.5, 2.375);
        return body(car, d, 4600, 0, 0.14)
                .set(Landmark.COWL, 600, 1150)
                .set(Landmark.SCREEN_TOP, 600 + 450, 1150 + 450 * slope(600, 1150, d, 0))
                .set(Landmark.FRONT_DOOR_CUT, 0.5 * d + 0.08 * d, 400)
                .set(Landmark.REAR_DOOR_CUT, 3.5 * d - 0.08 * d, 400)
                .set(Polyline.UNDERBODY, Sketches.points(1, -760, 480, 0, 280, 2800, 270, 3650, 560))
                .build();
    }

    private static DimensionSetBuilder wheels(double d, double rim, double wheelbaseInWheels, double heightInWheels) {
        return DimensionSet.builder()
                .origin(Origin.MEASURED)
                .set(Dimension.WHEELBASE, wheelbaseInWheels * d)
                .set(Dimension.OVERALL_HEIGHT, heightInWheels * d)
                .set(Dimension.FRONT_TYRE_DIAMETER, d)
                .set(Dimension.REAR_TYRE_DIAMETER, d)
                .set(Dimension.FRONT_RIM_DIAMETER, rim)
                .set(Dimension.REAR_RIM_DIAMETER, rim)
                .set(Dimension.FRONT_LOADED_RADIUS, d / 2)
                .set(Dimension.REAR_LOADED_RADIUS, d / 2);
    }

    private static DimensionSetBuilder body(
            DimensionSetBuilder car, double d, double length, double rockerInWheels, double gapInWheels) {
        double wheelbase = car.build().scalar(Dimension.WHEELBASE).orElseThrow();
        return car.set(Dimension.OVERALL_LENGTH, length)
                .set(Dimension.ROCKER_HEIGHT, d / 2 + rockerInWheels * d)
                .set(Landmark.ARCH_FRONT_TOP, 0, d + gapInWheels * d)
                .set(Landmark.ARCH_REAR_TOP, wheelbase, d + gapInWheels * d);
    }

    /** Of the windscreen line from the cowl down to a height over the front wheel centre given in wheels. */
    private static double slope(double cowlX, double cowlZ, double d, double aimInWheels) {
        return (cowlZ - d / 2 - aimInWheels * d) / cowlX;
    }
}
