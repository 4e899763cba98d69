package studio.stancebook.dimension.reshaping;

import studio.stancebook.geometry.Point;

/**
 * A landmark that was moved.
 *
 * @param from where it was
 * @param to where it is
 */
record LandmarkShift(Point from, Point to) {

    double byX() {
        return to.x() - from.x();
    }

    double byZ() {
        return to.z() - from.z();
    }
}
