package studio.stancebook.drawing.sideview;

import studio.stancebook.geometry.Point;

/**
 * Where a vehicle stands on a sheet.
 *
 * @param factor its size on the sheet over its size
 * @param shiftMm how far its front wheel centre stands behind x = 0 of the sheet
 */
record Placement(double factor, double shiftMm) {

    static final Placement AS_RECORDED = new Placement(1, 0);

    Point of(Point point) {
        return new Point(point.x() * factor + shiftMm, point.z() * factor);
    }
}
