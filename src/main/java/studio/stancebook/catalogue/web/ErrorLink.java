package studio.stancebook.catalogue.web;

import java.util.List;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.problem.FieldErrors;

/**
 * What is wrong with one input of the form for a package, and where it is.
 *
 * @param href the fragment of the input
 */
record ErrorLink(String href, String message) {

    static List<ErrorLink> of(FieldErrors errors) {
        return errors.all().stream()
                .map(error -> new ErrorLink("#" + id(error.field()), error.message()))
                .toList();
    }

    /** Landmarks and points of polylines are parts of an input. */
    private static String id(String field) {
        if (!field.startsWith(DimensionForm.PREFIX)) {
            return "f-" + field;
        }
        String input = field.replaceAll("\\[.*$", "").replace('.', '-');
        return Landmark.ofKey(field.substring(DimensionForm.PREFIX.length())).isPresent() ? input + "-x" : input;
    }
}
