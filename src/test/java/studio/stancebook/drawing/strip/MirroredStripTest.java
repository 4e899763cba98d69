package studio.stancebook.drawing.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.Interval;

class MirroredStripTest {

    /** A windscreen of 50 degrees over a band of 28 to 40 is one of 40 degrees under a band of 50 to 62. */
    @Test
    void turnsEverythingThatIsShownOfALean() {
        StripReading kept = StripReading.of("screen", "screen-angle", "Angle from the horizontal", 1, "°")
                .ticks(30, 35)
                .band(28, 40)
                .edges(new Interval(27, 29), null)
                .median(33)
                .value(50, 0.5)
                .verdict(StripVerdict.OUTSIDE_HIGH, "far")
                .build();

        StripReading turned = kept.mirrored("Angle from the vertical", AngleReference.VERTICAL::of);

        assertEquals("Angle from the vertical", turned.name());
        assertEquals(50, turned.lower());
        assertEquals(62, turned.upper());
        assertEquals(null, turned.lowerEdge());
        assertEquals(new Interval(61, 63), turned.upperEdge());
        assertEquals(57, turned.median());
        assertEquals(40, turned.value());
        assertEquals(0.5, turned.uncertainty());
        assertEquals(55, turned.ticks().get(0).value());
        assertEquals(StripVerdict.OUTSIDE_LOW, turned.verdict());
    }

    @Test
    void leavesABandOpenOnTheOtherSide() {
        StripReading turned = StripReading.of("screen", "screen-angle", "Angle", 1, "°")
                .band(28, Double.POSITIVE_INFINITY)
                .build()
                .mirrored("Angle", AngleReference.VERTICAL::of);

        assertEquals(null, turned.lower());
        assertEquals(62, turned.upper());
    }
}
