package studio.stancebook.proposal.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a new proposal starts from, as asked for.
 *
 * @param from {@code segment}, {@code between}, {@code package}, {@code proposal} or {@code nothing}
 * @param segment the key of a segment
 * @param other the key of the segment towards which {@code share} goes
 * @param share of the way between the two, in per cent
 * @param of the id of a package or of a proposal
 * @param revision of a proposal; the newest where none is named
 * @param tyre a designation; the one that the start has where it is blank
 * @param wheelbase as typed; the one that the start has where it is blank
 */
record StartParameters(
        @Nullable String from,
        @Nullable String segment,
        @Nullable String other,
        @Nullable String share,
        @Nullable Long of,
        @Nullable Integer revision,
        @Nullable String tyre,
        @Nullable String wheelbase) {

    static final String HALF_WAY = "50";

    String fromText() {
        return text(from);
    }

    String segmentKey() {
        return text(segment);
    }

    String otherKey() {
        return text(other);
    }

    String shareText() {
        return text(share);
    }

    /** Public, as the next one, because the page asks. */
    public String tyreText() {
        return text(tyre);
    }

    public String wheelbaseText() {
        return text(wheelbase);
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "").strip();
    }
}
