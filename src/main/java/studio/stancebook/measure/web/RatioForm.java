package studio.stancebook.measure.web;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.problem.Impossible;

/**
 * The form for a ratio as typed and picked: up to four lengths over up to four.
 *
 * @param key made from the name when it is left empty
 */
record RatioForm(
        @Nullable String key,
        @Nullable String name,
        @Nullable String over1,
        @Nullable String over2,
        @Nullable String over3,
        @Nullable String over4,
        @Nullable String under1,
        @Nullable String under2,
        @Nullable String under3,
        @Nullable String under4) {

    static RatioForm empty() {
        return new RatioForm("", "", "", "", "", "", "", "", "", "");
    }

    /** @throws Impossible naming every field that cannot be accepted */
    StudioRatio ratio() {
        return RatioReading.read(
                keyOrName(), name, picked(over1, over2, over3, over4), picked(under1, under2, under3, under4));
    }

    private String keyOrName() {
        String typed = Objects.requireNonNullElse(key, "").strip();
        String made = Objects.requireNonNullElse(name, "")
                .strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^[-0-9]+|-+$", "");
        return typed.isEmpty() ? made.substring(0, Math.min(60, made.length())) : typed;
    }

    private static List<@Nullable String> picked(@Nullable String... keys) {
        return Stream.of(keys)
                .map(key -> Objects.requireNonNullElse(key, "").strip())
                .filter(key -> !key.isEmpty())
                .<@Nullable String>map(key -> key)
                .toList();
    }
}
