package studio.stancebook.exchange.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.importing.ImportOptions;

/** How a file is to be brought in, as a form sends it: a box that is not ticked is not sent. */
record OptionsForm(
        @Nullable Boolean partial,
        @Nullable Boolean createSegments,
        @Nullable String origin) {

    static final ImportOptions USUAL = new ImportOptions(true, false, false, Origin.SPECIFICATION);

    ImportOptions options() {
        Origin known =
                origin == null ? Origin.SPECIFICATION : Origin.ofKey(origin).orElse(Origin.SPECIFICATION);
        return new ImportOptions(true, Boolean.TRUE.equals(partial), makesSegments(), known);
    }

    boolean makesSegments() {
        return Boolean.TRUE.equals(createSegments);
    }
}
