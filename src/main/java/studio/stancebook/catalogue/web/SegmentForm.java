package studio.stancebook.catalogue.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.problem.ExpectedVersion;

/**
 * The form for a segment as typed.
 *
 * @param key only when it is made
 * @param version that the form was filled from
 */
record SegmentForm(
        @Nullable String key,
        @Nullable String name,
        @Nullable String description,
        @Nullable Long version) {

    static SegmentForm empty() {
        return new SegmentForm("", "", "", 0L);
    }

    static SegmentForm of(SegmentView view) {
        return new SegmentForm(view.key(), view.name(), view.description(), view.version());
    }

    String keyText() {
        return text(key);
    }

    String nameText() {
        return text(name);
    }

    String descriptionText() {
        return text(description);
    }

    ExpectedVersion expected() {
        return new ExpectedVersion(version == null ? -1 : version);
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "").strip();
    }
}
