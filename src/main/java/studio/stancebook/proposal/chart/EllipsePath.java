package studio.stancebook.proposal.chart;

import studio.stancebook.quantity.NumberText;
import studio.stancebook.statistics.ConcentrationEllipse;

/** An ellipse as path data: four cubic curves, which differ from it by less than 0.03 % of its radius. */
final class EllipsePath {

    /**
     * How far the control points stand off, in radii of a quarter circle: 4/3 (sqrt 2 - 1), the value for which the curve
     * meets the circle in the middle (common practice in drawing programs).
     */
    private static final double STAND_OFF = 4.0 / 3 * (Math.sqrt(2) - 1);

    private EllipsePath() {}

    static String of(ConcentrationEllipse ellipse, Axis x, Axis y) {
        StringBuilder path = new StringBuilder("M").append(place(ellipse, x, y, 1, 0));
        for (int quarter = 0; quarter < 4; quarter++) {
            double c = Math.cos(quarter * Math.PI / 2);
            double s = Math.sin(quarter * Math.PI / 2);
            path.append('C')
                    .append(place(ellipse, x, y, c - STAND_OFF * s, s + STAND_OFF * c))
                    .append(' ')
                    .append(place(ellipse, x, y, STAND_OFF * c - s, STAND_OFF * s + c))
                    .append(' ')
                    .append(place(ellipse, x, y, -s, c));
        }
        return path.append('Z').toString();
    }

    /** The image of a point of the plane of the unit circle. */
    private static String place(ConcentrationEllipse ellipse, Axis x, Axis y, double u, double v) {
        double radius = Math.hypot(u, v);
        double angle = Math.atan2(v, u);
        double meanX = ellipse.moments().meanX();
        double meanY = ellipse.moments().meanY();
        double atX = meanX + radius * (ellipse.xAt(angle) - meanX);
        double atY = meanY + radius * (ellipse.yAt(angle) - meanY);
        return NumberText.plain(x.at(atX), 1) + " " + NumberText.plain(y.at(atY), 1);
    }
}
