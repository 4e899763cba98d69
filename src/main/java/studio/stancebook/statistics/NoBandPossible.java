package studio.stancebook.statistics;

import java.util.OptionalLong;

/**
 * Why a class gives no band by the method asked for.
 *
 * @param reason what is missing
 * @param n how many values the class had
 * @param neededN with how many there would be a band; empty if more values alone would not help
 */
public record NoBandPossible(Reason reason, int n, OptionalLong neededN) implements BandOutcome {

    /** What is missing. */
    public enum Reason {
        /** Fewer than {@value ClassSize#COMPUTED_FROM} values. */
        TOO_FEW_VALUES("too-few-values"),
        /** Too few values for the content and confidence asked for. */
        TOO_FEW_FOR_CONFIDENCE("too-few-for-confidence"),
        /** The values, or more than half of them, are equal, so that the band would have no width. */
        NO_SPREAD("no-spread");

        private final String key;

        Reason(String key) {
            this.key = key;
        }

        /** The reason in machine text. */
        public String key() {
            return key;
        }
    }

    static NoBandPossible needing(Reason reason, int n, long neededN) {
        return new NoBandPossible(reason, n, OptionalLong.of(neededN));
    }

    static NoBandPossible withoutSpread(int n) {
        return new NoBandPossible(Reason.NO_SPREAD, n, OptionalLong.empty());
    }
}
