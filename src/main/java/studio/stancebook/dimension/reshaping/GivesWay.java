package studio.stancebook.dimension.reshaping;

import java.util.Arrays;
import java.util.Optional;
import studio.stancebook.dimension.Dimension;

/** Which length takes up a change of the wheelbase, of an overhang or of the overall length. */
public enum GivesWay {
    /** The overall length follows. */
    LENGTH(Dimension.OVERALL_LENGTH),
    FRONT_OVERHANG(Dimension.FRONT_OVERHANG),
    REAR_OVERHANG(Dimension.REAR_OVERHANG);

    private final Dimension dimension;

    GivesWay(Dimension dimension) {
        this.dimension = dimension;
    }

    /** The one of a JSON name such as {@code rearOverhang}. */
    public static Optional<GivesWay> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key().equals(key)).findFirst();
    }

    public String key() {
        return dimension.key();
    }

    public Dimension dimension() {
        return dimension;
    }
}
