package studio.stancebook.catalogue.web;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/**
 * A package as it is sent.
 *
 * @param origin measured, drawing, specification or derived; a drawing when it is not said
 * @param dimensions names of dimensions, landmarks and polylines to their values
 */
record PackageBody(
        @Nullable String name,
        @Nullable String segment,
        @Nullable Integer modelYear,
        @Nullable String origin,
        @Nullable Map<String, Object> dimensions) {

    /** @throws Impossible naming every field that cannot be accepted */
    PackageDraft draft() {
        ErrorList errors = new ErrorList();
        String nameText = text(name);
        CatalogueRules.name("name", nameText).ifPresent(errors::add);
        CatalogueRules.modelYear(modelYear).ifPresent(errors::add);
        String segmentText = text(segment);
        if (segmentText.isEmpty()) {
            errors.add(new FieldError("segment", "The key of a segment is needed."));
        }
        Origin readOrigin = readOrigin(errors);
        DimensionSet set = readDimensions(readOrigin, errors);
        if (set == null || !errors.isEmpty()) {
            throw Impossible.of(errors);
        }
        return new PackageDraft(nameText, segmentText, modelYear, readOrigin, set);
    }

    private static String text(@Nullable String text) {
        return Objects.requireNonNullElse(text, "").strip();
    }

    private Origin readOrigin(ErrorList errors) {
        if (origin == null) {
            return Origin.DRAWING;
        }
        Optional<Origin> known = Origin.ofKey(origin);
        if (known.isEmpty()) {
            errors.add(new FieldError(
                    "origin",
                    "\"" + Parameters.shown(origin) + "\" is no origin: it is one of " + Parameters.origins() + "."));
        }
        return known.orElse(Origin.DRAWING);
    }

    private @Nullable DimensionSet readDimensions(Origin readOrigin, ErrorList errors) {
        if (dimensions == null) {
            errors.add(new FieldError("dimensions", "Dimensions are needed, at least the wheelbase (L101) in mm."));
            return null;
        }
        try {
            return DimensionJson.read(dimensions, readOrigin);
        } catch (ImpossibleDimensions impossible) {
            errors.addAll(impossible);
            return null;
        }
    }
}
