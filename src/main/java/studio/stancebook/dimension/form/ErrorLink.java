package studio.stancebook.dimension.form;

import java.util.List;
import java.util.Locale;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.ValueLabels;
import studio.stancebook.problem.FieldError;

/**
 * What is wrong with one input of a form that holds a dimension form, and where that input is.
 *
 * @param href the fragment of the input
 */
public record ErrorLink(String href, String message) {

    /** One link for each error; inputs outside the dimension form have ids that begin with {@code f-}. */
    public static List<ErrorLink> of(List<FieldError> errors) {
        return errors.stream()
                .map(error -> new ErrorLink("#" + id(error.field()), named(error)))
                .toList();
    }

    /** A message about a dimension begins with what it is about, unless it says so itself. */
    private static String named(FieldError error) {
        if (!error.field().startsWith(DimensionForm.PREFIX)) {
            return error.message();
        }
        String key = error.field()
                .substring(DimensionForm.PREFIX.length())
                .replaceFirst("^(uncertainties|origins)\\.", "")
                .replaceFirst("[.\\[].*$", "");
        return ValueLabels.of(key)
                .filter(label -> !error.message().toLowerCase(Locale.ROOT).contains(label.toLowerCase(Locale.ROOT)))
                .map(label -> label + ": " + error.message())
                .orElse(error.message());
    }

    /** Landmarks and points of polylines are parts of an input. */
    private static String id(String field) {
        if (!field.startsWith(DimensionForm.PREFIX)) {
            return "f-" + field;
        }
        String input = field.replaceAll("\\[.*$", "").replace('.', '-');
        boolean point =
                Landmark.ofKey(field.substring(DimensionForm.PREFIX.length())).isPresent();
        return point ? input + "-x" : input;
    }
}
