package studio.stancebook.dimension;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The lines of a side view that are recorded point by point. */
public enum Polyline {
    /** Rigid parts seen from below, front to rear. */
    UNDERBODY("underbody", "Underbody", 2),
    /** Upper silhouette, front to rear; areas close it along the ground. */
    OUTLINE("outline", "Outline", 3),
    /** The side glass, closed. */
    DAYLIGHT_OPENING("daylightOpening", "Daylight opening", 3);

    /** More points than this are refused. */
    public static final int MOST_POINTS = 5000;

    private static final Map<String, Polyline> BY_KEY =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Polyline::key, Function.identity()));

    private final String key;
    private final String label;
    private final int fewestPoints;

    Polyline(String key, String label, int fewestPoints) {
        this.key = key;
        this.label = label;
        this.fewestPoints = fewestPoints;
    }

    /** The polyline of a JSON name. */
    public static Optional<Polyline> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** The name in JSON, such as {@code underbody}. */
    public String key() {
        return key;
    }

    /** The trade's word for it. */
    public String label() {
        return label;
    }

    /** Fewer points than this say nothing. */
    public int fewestPoints() {
        return fewestPoints;
    }
}
