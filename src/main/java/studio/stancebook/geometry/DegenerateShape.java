package studio.stancebook.geometry;

import java.util.List;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/** A line, polygon or pair of tyres that is none: coinciding points, a crossing outline, overlapping circles. */
public final class DegenerateShape extends Impossible {

    DegenerateShape(String message) {
        super(message);
    }

    /** @param field the field of a side view at fault */
    DegenerateShape(String field, String message) {
        super(message, List.of(new FieldError(field, message)));
    }
}
