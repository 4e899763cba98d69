package studio.stancebook.geometry;

import studio.stancebook.problem.Impossible;

/** A line, polygon or pair of tyres that is none: coinciding points, a crossing outline, overlapping circles. */
public final class DegenerateShape extends Impossible {

    DegenerateShape(String message) {
        super(message);
    }
}
