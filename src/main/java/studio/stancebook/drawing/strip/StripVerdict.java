package studio.stancebook.drawing.strip;

import java.util.Arrays;

/** The verdicts of an assessment, each with a word and a mark of its own shape. */
public enum StripVerdict {
    /** A filled diamond. */
    INSIDE("inside"),
    /** A filled diamond in red, tied to the edge that it is beyond. */
    OUTSIDE_LOW("outside-low"),
    /** A filled diamond in red, tied to the edge that it is beyond. */
    OUTSIDE_HIGH("outside-high"),
    /** A hatched diamond. */
    TOO_CLOSE("too-close"),
    /** A hollow ring at the beginning of the strip: there is no value to place. */
    NOT_MEASURABLE("not-measurable"),
    /** A filled diamond on a broken axis: there is nothing to judge it by. */
    NO_BAND("no-band"),
    /** No mark: the strip shows a class and its band, and no proposal. */
    CLASS("class");

    private final String key;

    StripVerdict(String key) {
        this.key = key;
    }

    /** The name in JSON. */
    public String key() {
        return key;
    }

    /** @throws IllegalArgumentException if there is none of this name */
    public static StripVerdict ofKey(String key) {
        return Arrays.stream(values())
                .filter(verdict -> verdict.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no verdict " + key));
    }

    /** The same of a measure that is read the other way round. */
    StripVerdict mirrored() {
        return switch (this) {
            case OUTSIDE_LOW -> OUTSIDE_HIGH;
            case OUTSIDE_HIGH -> OUTSIDE_LOW;
            default -> this;
        };
    }

    public boolean outside() {
        return this == OUTSIDE_LOW || this == OUTSIDE_HIGH;
    }
}
