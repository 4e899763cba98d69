package studio.stancebook.exchange.mapping;

import java.util.Arrays;
import java.util.Optional;

/** What belongs to a package beside its dimensions. */
public enum Field {
    NAME("name"),
    SEGMENT("segment"),
    /** The words for a segment that has to be made. */
    SEGMENT_NAME("segmentName"),
    MODEL_YEAR("modelYear"),
    ORIGIN("origin"),
    SCALE("scale"),
    EDITION("edition"),
    /** {@code wheelbase 2; cowl 3}: standard uncertainties by value. */
    UNCERTAINTIES("uncertainties"),
    /** {@code wheelbase measured; cowl drawing}: origins by value. */
    ORIGINS("origins"),
    /** The reason why the package does not count in its class. */
    SET_ASIDE("setAside"),
    /** Lines {@code wheelbase: reason}: values that do not count. */
    VALUES_SET_ASIDE("valuesSetAside"),
    /** Open questions, one a line. */
    QUERIES("queries");

    private final String key;

    Field(String key) {
        this.key = key;
    }

    public static Optional<Field> ofKey(String key) {
        return Arrays.stream(values()).filter(field -> field.key.equals(key)).findFirst();
    }

    /** The name in a mapping and in a heading of our own. */
    public String key() {
        return key;
    }
}
