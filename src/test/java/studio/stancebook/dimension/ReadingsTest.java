package studio.stancebook.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

class ReadingsTest {

    private static DimensionSetBuilder wheelbase(double mm) {
        return DimensionSet.builder().set(Dimension.WHEELBASE, mm);
    }

    @Test
    void derivesWhicheverOfTheThreeLengthsIsMissing() {
        Readings length = new Readings(wheelbase(2800)
                .set(Dimension.FRONT_OVERHANG, 850)
                .set(Dimension.REAR_OVERHANG, 1000)
                .build());
        Readings front = new Readings(wheelbase(2800)
                .set(Dimension.OVERALL_LENGTH, 4650)
                .set(Dimension.REAR_OVERHANG, 1000)
                .build());
        Readings rear = new Readings(wheelbase(2800)
                .set(Dimension.OVERALL_LENGTH, 4650)
                .set(Dimension.FRONT_OVERHANG, 850)
                .build());

        assertEquals(4650, length.get(Reading.OVERALL_LENGTH).value());
        assertEquals(850, front.get(Reading.FRONT_OVERHANG).value());
        assertEquals(1000, rear.get(Reading.REAR_OVERHANG).value());
    }

    @Test
    void combinesTheUncertaintyOfADerivedLength() {
        DimensionSet set = wheelbase(2800)
                .set(Dimension.FRONT_OVERHANG, 850)
                .set(Dimension.REAR_OVERHANG, 1000)
                .uncertainty("wheelbase", 2)
                .uncertainty("frontOverhang", 3)
                .uncertainty("rearOverhang", 6)
                .build();

        Estimate length = new Readings(set).get(Reading.OVERALL_LENGTH);

        assertEquals(7, length.uncertainty(set::standardUncertainty), 1e-12);
    }

    @Test
    void leavesOutWhatCannotBeHad() {
        Readings readings =
                new Readings(wheelbase(2800).set(Dimension.OVERALL_LENGTH, 4650).build());

        assertFalse(readings.has(Reading.FRONT_OVERHANG));
        assertFalse(readings.has(Reading.WHEEL_DIAMETER));
        assertFalse(readings.has(Reading.OVERALL_HEIGHT));
    }

    @Test
    void needsBothTyresForTheReferenceDiameter() {
        Readings one = new Readings(
                wheelbase(2800).set(Dimension.FRONT_TYRE_DIAMETER, 700).build());
        Readings both = new Readings(wheelbase(2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 720)
                .build());

        assertFalse(one.has(Reading.WHEEL_DIAMETER));
        assertEquals(710, both.get(Reading.WHEEL_DIAMETER).value());
    }

    @Test
    void letsTheDiameterOfEqualTyresVaryAsOne() {
        DimensionSet same = wheelbase(2800)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .build();

        assertEquals(
                List.of(Variable.TYRE_DIAMETER),
                List.copyOf(new Readings(same)
                        .get(Reading.WHEEL_DIAMETER)
                        .sensitivities()
                        .keySet()));
    }

    @Test
    void standsTheWheelOnItsLoadedRadiusWhereThereIsOne() {
        DimensionSetBuilder tyres =
                wheelbase(2800).set(Dimension.FRONT_TYRE_DIAMETER, 700).set(Dimension.REAR_TYRE_DIAMETER, 700);

        assertEquals(
                350,
                new Readings(tyres.build()).get(Reading.FRONT_CENTRE_HEIGHT).value());
        assertEquals(
                335,
                new Readings(tyres.set(Dimension.FRONT_LOADED_RADIUS, 335).build())
                        .get(Reading.FRONT_CENTRE_HEIGHT)
                        .value());
    }

    @Test
    void readsTheRoofOffTheOutlineElseBetweenTheLandmarksAroundIt() {
        DimensionSetBuilder landmarks = wheelbase(2800)
                .set(Landmark.SCREEN_TOP, 1000, 1400)
                .set(Landmark.ROOF_APEX, 1800, 1440)
                .set(Landmark.BACKLIGHT_TOP, 2600, 1400);
        DimensionSet outlined = landmarks
                .set(Polyline.OUTLINE, List.of(new Point(-800, 500), new Point(1300, 1500), new Point(3800, 900)))
                .build();

        assertEquals(
                1420,
                new Readings(outlined.toBuilder().without("outline").build())
                        .get(Reading.ROOF_AT_MID_WHEELBASE)
                        .value());
        assertEquals(
                1476, new Readings(outlined).get(Reading.ROOF_AT_MID_WHEELBASE).value(), 1e-9);
    }

    @Test
    void hasNoRoofWhereNothingIsRecordedOnOneSide() {
        Readings readings = new Readings(wheelbase(2800)
                .set(Landmark.SCREEN_TOP, 1000, 1400)
                .set(Landmark.ROOF_APEX, 1200, 1440)
                .build());

        assertFalse(readings.has(Reading.ROOF_AT_MID_WHEELBASE));
    }

    @Test
    void prefersLandmarksToTypedAngles() {
        DimensionSet set = wheelbase(2800)
                .set(Dimension.SCREEN_ANGLE, 30)
                .set(Landmark.COWL, 500, 1000)
                .set(Landmark.SCREEN_TOP, 1000, 1500)
                .build();

        assertEquals(45, new Readings(set).get(Reading.SCREEN_ANGLE).value(), 1e-12);
        assertEquals(
                30,
                new Readings(set.toBuilder().without("screenTop").build())
                        .get(Reading.SCREEN_ANGLE)
                        .value());
    }

    @Test
    void measuresTheBacklightUpFromTheHorizontalAheadOfIt() {
        DimensionSet upright = wheelbase(2800)
                .set(Landmark.BACKLIGHT_TOP, 3000, 1600)
                .set(Landmark.BACKLIGHT_BASE, 3000, 1100)
                .build();
        DimensionSet swept = wheelbase(2800)
                .set(Landmark.BACKLIGHT_TOP, 2500, 1400)
                .set(Landmark.BACKLIGHT_BASE, 3000, 900)
                .build();

        assertEquals(90, new Readings(upright).get(Reading.BACKLIGHT_ANGLE).value(), 1e-12);
        assertEquals(45, new Readings(swept).get(Reading.BACKLIGHT_ANGLE).value(), 1e-12);
        assertTrue(new Readings(swept).find(Reading.SCREEN_ANGLE).isEmpty());
    }

    /** ISO 4000-1: the service description (load index, speed symbol) is no part of the size. */
    @Test
    void takeTyresOfOneSizeForTheSameWhateverTheirServiceDescription() {
        DimensionSet set = DimensionSet.builder()
                .set(Dimension.WHEELBASE, 2850)
                .tyre(Axle.FRONT, TyreDesignation.parse("265/70R17 113S"))
                .tyre(Axle.REAR, TyreDesignation.parse("265/70R17 115T"))
                .build();

        assertTrue(set.sameTyresAllRound());
        assertEquals(
                Set.of(Variable.TYRE_DIAMETER),
                new Readings(set).get(Reading.WHEEL_DIAMETER).sensitivities().keySet());
    }
}
