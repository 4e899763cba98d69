package studio.stancebook.band;

import java.util.List;
import java.util.OptionalDouble;

/** How a measure stands to its band, as JCGM 106 lays out. */
public sealed interface Verdict {

    /** The name in JSON: {@code inside}, {@code outside-low} and so on. */
    default String key() {
        return kind().key();
    }

    VerdictKind kind();

    /** The six answers there are, in the order in which a page lists them. */
    enum VerdictKind {
        OUTSIDE_LOW("outside-low"),
        OUTSIDE_HIGH("outside-high"),
        TOO_CLOSE("too-close"),
        INSIDE("inside"),
        NOT_MEASURABLE("not-measurable"),
        NO_BAND("no-band");

        private final String key;

        VerdictKind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }

        /** True when a value was held against a band. */
        public boolean judged() {
            return this != NOT_MEASURABLE && this != NO_BAND;
        }

        public boolean outside() {
            return this == OUTSIDE_LOW || this == OUTSIDE_HIGH;
        }
    }

    /** The value with twice its standard uncertainty to either side lies within the closed band. */
    record Inside() implements Verdict {
        @Override
        public VerdictKind kind() {
            return VerdictKind.INSIDE;
        }
    }

    /**
     * The value with twice its standard uncertainty to either side lies wholly beyond an edge.
     *
     * @param side of which edge
     * @param by distance of the value from that edge, in the measure's unit, positive
     * @param byBandWidths the same as a share of the band's width; empty for a band that is open to one side or has no
     *     width
     */
    record Outside(Side side, double by, OptionalDouble byBandWidths) implements Verdict {

        public Outside {
            if (!(by > 0)) {
                throw new IllegalArgumentException("Outside is beyond an edge, got a distance of " + by);
            }
        }

        @Override
        public VerdictKind kind() {
            return side == Side.LOW ? VerdictKind.OUTSIDE_LOW : VerdictKind.OUTSIDE_HIGH;
        }
    }

    /** The value with twice its standard uncertainty to either side straddles an edge. */
    record TooClose() implements Verdict {
        @Override
        public VerdictKind kind() {
            return VerdictKind.TOO_CLOSE;
        }
    }

    /**
     * There is no value.
     *
     * @param reason in words
     * @param missing what would have to be recorded, in JSON names; empty when nothing would help
     */
    record NotMeasurable(String reason, List<String> missing) implements Verdict {

        public NotMeasurable {
            missing = List.copyOf(missing);
        }

        @Override
        public VerdictKind kind() {
            return VerdictKind.NOT_MEASURABLE;
        }
    }

    /** There is a value but no band to hold it against. */
    record NoBand() implements Verdict {
        @Override
        public VerdictKind kind() {
            return VerdictKind.NO_BAND;
        }
    }
}
