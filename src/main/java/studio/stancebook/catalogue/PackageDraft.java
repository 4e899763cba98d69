package studio.stancebook.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/**
 * A benchmark package as somebody wants it recorded.
 *
 * @param name 1 to 200 characters on one line; blanks around it are dropped
 * @param segment the key of its segment
 * @param modelYear 1880 to 2100, or null
 * @param origin where the package comes from as a whole
 * @param queries questions that it brings with it, each cut to 500 characters; empty ones are dropped
 */
public record PackageDraft(
        String name,
        String segment,
        @Nullable Integer modelYear,
        Origin origin,
        DimensionSet dimensions,
        List<String> queries) {

    /** @throws Impossible naming every field that cannot be accepted */
    public PackageDraft {
        name = name.strip();
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.name("name", name).ifPresent(errors::add);
        CatalogueRules.modelYear(modelYear).ifPresent(errors::add);
        CatalogueRules.refuse(errors);
        queries = queries.stream()
                .map(CatalogueRules::shortened)
                .filter(question -> !question.isEmpty())
                .toList();
    }

    /** A draft without questions. */
    public PackageDraft(
            String name, String segment, @Nullable Integer modelYear, Origin origin, DimensionSet dimensions) {
        this(name, segment, modelYear, origin, dimensions, List.of());
    }

    /** What no other package may share. */
    public PackageName packageName() {
        return new PackageName(name, segment, modelYear);
    }
}
