package studio.stancebook.measure;

import java.util.Optional;
import studio.stancebook.dimension.*;

final class Underside {
    static Optional<Underside> of(DimensionSet s, Readings r) {
        return Optional.empty();
    }

    static Formula.Result angle(Subject s, UnderbodyAngle a) {
        return Formula.Result.none(NotMeasurable.Why.DEGENERATE);
    }
}
