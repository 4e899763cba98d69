package studio.stancebook.catalogue.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/**
 * The form for a package as typed, but for its dimensions.
 *
 * @param segment the key of a segment
 * @param origin the key of an origin
 * @param version that the form was filled from
 */
record PackageForm(
        @Nullable String name,
        @Nullable String segment,
        @Nullable String modelYear,
        @Nullable String origin,
        @Nullable Long version) {

    static PackageForm empty(@Nullable String segment) {
        return new PackageForm("", segment, "", Origin.DRAWING.key(), 0L);
    }

    static PackageForm of(PackageView view) {
        return new PackageForm(
                view.name(),
                view.segment(),
                year(view.modelYear()),
                view.origin().key(),
                view.version());
    }

    static String year(@Nullable Integer modelYear) {
        return modelYear == null ? "" : String.valueOf(modelYear);
    }

    String nameText() {
        return text(name);
    }

    ExpectedVersion expected() {
        return new ExpectedVersion(version == null ? -1 : version);
    }

    /** @throws Impossible naming every field that cannot be accepted, those of the dimensions included */
    PackageDraft draft(DimensionForm typed) {
        ErrorList errors = new ErrorList();
        String nameText = nameText();
        CatalogueRules.name("name", nameText).ifPresent(errors::add);
        if (text(segment).isEmpty()) {
            errors.add(new FieldError("segment", "Choose the segment that the package belongs to."));
        }
        Integer year = readYear(errors);
        Origin readOrigin = Origin.ofKey(text(origin)).orElse(Origin.DRAWING);
        DimensionSet set = dimensions(typed, readOrigin, errors);
        if (set == null || !errors.isEmpty()) {
            throw Impossible.of(errors);
        }
        return new PackageDraft(nameText, text(segment), year, readOrigin, set);
    }

    private @Nullable Integer readYear(ErrorList errors) {
        String typed = text(modelYear);
        if (typed.isEmpty()) {
            return null;
        }
        if (!typed.matches("[0-9]{1,5}")) {
            errors.add(new FieldError(
                    "modelYear", "\"" + Parameters.shown(typed) + "\" is not a year: write four digits."));
            return null;
        }
        Integer year = Integer.valueOf(typed);
        CatalogueRules.modelYear(year).ifPresent(errors::add);
        return year;
    }

    private static @Nullable DimensionSet dimensions(DimensionForm typed, Origin origin, ErrorList errors) {
        try {
            return typed.read(origin);
        } catch (ImpossibleDimensions impossible) {
            errors.addAll(impossible);
            return null;
        }
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "").strip();
    }
}
