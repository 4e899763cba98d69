package studio.stancebook.exchange.web;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.importing.ImportOptions;

/** How a file is to be brought in, as a form sends it: a box that is not ticked is not sent. */
record OptionsForm(
        @Nullable Boolean partial,
        @Nullable Boolean createSegments,
        @Nullable Boolean update,
        @Nullable String origin) {

    static final ImportOptions USUAL = new ImportOptions(true, false, false, Origin.SPECIFICATION);

    /** @param pointed keys of segments, by the words that stand for them */
    ImportOptions options(Map<String, String> pointed) {
        Origin known =
                origin == null ? Origin.SPECIFICATION : Origin.ofKey(origin).orElse(Origin.SPECIFICATION);
        return new ImportOptions(
                true, Boolean.TRUE.equals(partial), makesSegments(), known, Boolean.TRUE.equals(update), pointed, null);
    }

    boolean makesSegments() {
        return Boolean.TRUE.equals(createSegments);
    }
}
