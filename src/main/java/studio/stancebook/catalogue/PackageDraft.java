package studio.stancebook.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.internal.Soundness;
import studio.stancebook.classes.layout.DimensionText;
import studio.stancebook.classes.layout.ValueLayout;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Disagreement;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.quantity.ShownUnits;

/** A benchmark package as somebody wants it recorded; immutable. */
public final class PackageDraft {

    private final PackageName packageName;
    private final Origin origin;
    private final DimensionSet dimensions;
    private final List<String> queries;
    private @Nullable String digest;
    private @Nullable List<Disagreement> disagreements;
    private @Nullable Measures measures;

    /** Every measure, in the order of a layout. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Measures(ValueLayout layout, double[] values) {}

    /**
     * @param name 1 to 200 characters on one line; blanks around it are dropped
     * @param segment the key of its segment
     * @param modelYear 1880 to 2100, or null
     * @param origin where the package comes from as a whole
     * @param queries questions that it brings with it, each cut to 500 characters; empty ones are dropped
     * @throws Impossible naming every field that cannot be accepted
     */
    public PackageDraft(
            String name,
            String segment,
            @Nullable Integer modelYear,
            Origin origin,
            DimensionSet dimensions,
            List<String> queries) {
        String stripped = name.strip();
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.name("name", stripped).ifPresent(errors::add);
        CatalogueRules.modelYear(modelYear).ifPresent(errors::add);
        CatalogueRules.refuse(errors);
        this.packageName = new PackageName(stripped, segment, modelYear);
        this.origin = origin;
        this.dimensions = dimensions;
        this.queries = queries.stream()
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
        return packageName;
    }

    public String name() {
        return packageName.name();
    }

    /** The key of its segment. */
    public String segment() {
        return packageName.segment();
    }

    public @Nullable Integer modelYear() {
        return packageName.modelYear();
    }

    /** Where the package comes from as a whole. */
    public Origin origin() {
        return origin;
    }

    public DimensionSet dimensions() {
        return dimensions;
    }

    /** The questions that it brings with it. */
    public List<String> queries() {
        return queries;
    }

    /** The same for drafts of the same values, whatever their origins and uncertainties: SHA-256 in hexadecimal. */
    public String digest() {
        String known = digest;
        if (known == null) {
            known = DimensionText.digest(dimensions);
            digest = known;
        }
        return known;
    }

    /** What is recorded twice and does not agree with itself. */
    public List<Disagreement> disagreements() {
        List<Disagreement> known = disagreements;
        if (known == null) {
            known = ShownUnits.asKept(() -> Soundness.disagreements(dimensions));
            disagreements = known;
        }
        return known;
    }

    /** Every measure in the order of a layout, NaN where there is no value; not to be changed, and for this module alone. */
    public double[] measures(ValueLayout layout) {
        Measures known = measures;
        if (known == null || known.layout() != layout) {
            known = new Measures(layout, layout.measuresOf(dimensions));
            measures = known;
        }
        return known.values();
    }
}
