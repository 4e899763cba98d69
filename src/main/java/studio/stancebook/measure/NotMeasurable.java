package studio.stancebook.measure;

import java.util.List;

/**
 * No value, and why.
 *
 * @param why the kind of reason
 * @param missing what would have to be recorded, in JSON names; empty when nothing would help
 * @param recorded what is recorded of it, in words; empty when nothing is
 */
public record NotMeasurable(Why why, List<String> missing, String recorded) implements MeasureValue {

    /** The kinds of reason. */
    public enum Why {
        /** Something is not recorded. */
        MISSING,
        /** The underbody does not reach as far as is asked for. */
        RECORDED_IN_PART,
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
        return new NotMeasurable(why, List.of(), "");
    }

    static NotMeasurable missing(List<String> missing) {
        return new NotMeasurable(Why.MISSING, missing, "");
    }

    /**
     * Says in words what has to be recorded.
     *
     * @param missing in JSON names, at least one
     */
    public static String needs(List<String> missing) {
        return "Needs " + MissingWords.of(missing);
    }

    /** The reason in words. */
    public String reason() {
        return switch (why) {
            case MISSING -> needs(missing);
            case RECORDED_IN_PART -> recorded + "; needs " + MissingWords.of(missing);
            case NOT_LIMITED -> "Not limited by the body";
            case UNSCALED -> "A sketch without dimensions has no areas or lengths";
            case DEGENERATE -> "The recorded values leave nothing to compare with";
        };
    }
}
