package studio.stancebook.dimension;

import java.util.DoubleSummaryStatistics;
import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.NumberText;

/**
 * How far the recorded underbody reaches: to the nose, to the tail, from tyre to tyre. It reaches the nose when its
 * foremost point is no more than a quarter of the front overhang behind it, which a rounded bumper takes up; likewise the
 * tail: studio decision 0083.
 *
 * @param readings of the side view
 * @param fromX its foremost point
 * @param toX its rearmost point
 */
public record UnderbodyExtent(Readings readings, double fromX, double toX) {

    private static final double SHORTFALL_SHARE = 0.25;

    /** Whether the underbody reaches as far as is asked for. */
    public enum Reach {
        COMPLETE,
        SHORT,
        /** There is no overhang by which to tell. */
        UNKNOWN
    }

    /** Of a side view whose underbody is recorded. */
    public static UnderbodyExtent of(Readings readings) {
        DoubleSummaryStatistics x = readings.set().points(Polyline.UNDERBODY).stream()
                .mapToDouble(Point::x)
                .summaryStatistics();
        return new UnderbodyExtent(readings, x.getMin(), x.getMax());
    }

    /** As far as the nose. */
    public Reach nose() {
        return overhang(Reading.FRONT_OVERHANG, -fromX);
    }

    /** As far as the tail. */
    public Reach tail() {
        return overhang(
                Reading.REAR_OVERHANG, toX - readings.get(Reading.WHEELBASE).value());
    }

    /** From tyre to tyre, whose wheel centres must be known; what a tyre hides in the side view need not be recorded. */
    public Reach betweenTyres() {
        double front = readings.get(Reading.FRONT_CENTRE_HEIGHT).value();
        double rear = readings.get(Reading.REAR_CENTRE_HEIGHT).value();
        return reaches(fromX <= front && toX >= readings.get(Reading.WHEELBASE).value() - rear);
    }

    /** True unless the underbody is known to begin behind the nose or to end ahead of the tail. */
    public boolean wholeVehicle() {
        return nose() != Reach.SHORT && tail() != Reach.SHORT;
    }

    private Reach overhang(Reading overhang, double recorded) {
        return readings.find(overhang)
                .map(whole -> reaches(recorded >= (1 - SHORTFALL_SHARE) * whole.value()))
                .orElse(Reach.UNKNOWN);
    }

    private static Reach reaches(boolean complete) {
        return complete ? Reach.COMPLETE : Reach.SHORT;
    }

    /** "underbody recorded from 500 to 2300 mm only". */
    public String text() {
        String unit = readings.set().scale() == Scale.UNSCALED ? "" : " mm";
        return "underbody recorded from " + NumberText.plain(fromX, 3) + " to " + NumberText.plain(toX, 3) + unit
                + " only";
    }
}
