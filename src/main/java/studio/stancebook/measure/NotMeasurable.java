package studio.stancebook.measure;

import java.util.List;

/**
 * No value, and why.
 *
 * @param why the kind of reason
 * @param missing what would have to be recorded, in JSON names; empty when nothing would help
 */
public record NotMeasurable(Why why, List<String> missing) implements MeasureValue {

    /** The kinds of reason. */
    public enum Why {
        /** Something is not recorded. */
        MISSING,
        /** Nothing of the body limits the angle. */
        NOT_LIMITED,
        /** The sketch carries no dimension, so only ratios and angles exist. */
        UNSCALED,
        /** The recorded values leave nothing to divide by or no area. */
        DEGENERATE
    }

    public NotMeasurable {
        missing = List.copyOf(missing);
    }

    static NotMeasurable because(Why why) {
        return new NotMeasurable(why, List.of());
    }

    /** The reason in words. */
    public String reason() {
        return switch (why) {
            case MISSING -> "needs " + String.join("; ", missing);
            case NOT_LIMITED -> "not limited by the body";
            case UNSCALED -> "a sketch without dimensions has no areas or lengths";
            case DEGENERATE -> "the recorded values leave nothing to compare with";
        };
    }
}
