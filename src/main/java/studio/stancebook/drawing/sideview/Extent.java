package studio.stancebook.drawing.sideview;

import studio.stancebook.drawing.Sheet;

/**
 * The part of the plane that a sheet shows, mm, z upwards.
 *
 * @param em height of the lettering
 * @param rulerX where the circles of the height ruler are centred; beyond the tail
 */
record Extent(double left, double right, double bottom, double top, double em, double rulerX) {

    /** Rows of lettering under the ground line of a wide and a narrow sheet, in em. */
    private static final double WIDE_FOOT_EM = 9.2;

    private static final double NARROW_FOOT_EM = 6.6;

    /** What a thumbnail is wide enough for, mm. */
    private static final double COMMON_LENGTH_MM = 5000;

    static Extent of(Vehicle vehicle, Format format, boolean ghosts) {
        double front = vehicle.frontEnd();
        double rear = vehicle.rearEnd();
        double d = vehicle.nominalDiameter();
        return switch (format) {
            case WIDE -> wide(front, rear, d, vehicle.topEnd(), ghosts);
            case NARROW -> narrow(front, rear, vehicle.topEnd());
            case THUMBNAIL -> thumbnail(front, rear, vehicle.topEnd());
        };
    }

    private static Extent wide(double front, double rear, double d, double top, boolean ghosts) {
        double marginEm = ghosts ? 14.5 : 7.5;
        double share = Format.WIDE.emShare();
        double em = (rear - front + d) * share / (1 - marginEm * share);
        double ruler = rear + (ghosts ? 9 : 2) * em + d / 2;
        return new Extent(front - 4.5 * em, ruler + d / 2 + em, -WIDE_FOOT_EM * em, top + 3.4 * em, em, ruler);
    }

    private static Extent narrow(double front, double rear, double top) {
        double share = Format.NARROW.emShare();
        double em = (rear - front) * share / (1 - 1.6 * share);
        return new Extent(front - 0.8 * em, rear + 0.8 * em, -NARROW_FOOT_EM * em, top + 2.2 * em, em, rear);
    }

    /** All to one scale up to a length that few exceed, so that a small car is small beside a large one. */
    private static Extent thumbnail(double front, double rear, double top) {
        double width = Math.max(rear - front, COMMON_LENGTH_MM);
        double em = width * Format.THUMBNAIL.emShare();
        double middle = (front + rear) / 2;
        double half = width / 2 + 0.4 * em;
        return new Extent(middle - half, middle + half, -0.4 * em, top + 0.4 * em, em, rear);
    }

    Sheet sheet(DrawingBuilder drawing, Format format) {
        return new Sheet(left, -top, right - left, top - bottom, em, format.decimals(), drawing.layers());
    }
}
