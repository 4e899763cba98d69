package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.Problems;
import studio.stancebook.exchange.mapping.RowDraft;
import studio.stancebook.exchange.mapping.RowProblem;
import studio.stancebook.exchange.mapping.RowReading;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.problem.FieldError;

/** The rules that a row has to keep beyond being readable: its segment, its name, and being there once in the file. */
final class RowRules {

    private final SegmentBook segments;
    private final MeasureRegistry measures;
    private final Consumer<PackageDraft> prepared;
    private final KeyIndex names = new KeyIndex();

    /**
     * @param measures those whose values can be set aside
     * @param prepared takes each draft that keeps the rules
     */
    RowRules(SegmentBook segments, MeasureRegistry measures, Consumer<PackageDraft> prepared) {
        this.segments = segments;
        this.measures = measures;
        this.prepared = prepared;
    }

    /** The row as the catalogue takes it; null, with the errors among the problems, when it cannot be taken. */
    @Nullable
    Accepted apply(RowReading reading) {
        RowDraft row = reading.draft();
        Problems problems = reading.problems();
        if (row == null) {
            return null;
        }
        Integer year = modelYear(reading, row);
        CatalogueRules.name(Field.NAME.key(), row.name().strip())
                .ifPresent(error -> refuse(reading, Field.NAME, row.name(), error));
        Optional<String> segment = segments.find(row.segment(), row.segmentName());
        if (segment.isEmpty()) {
            problems.error(reading.columnOf().apply(Field.SEGMENT.key()), row.segment(), segments.refusal());
        }
        checkReasons(reading, row);
        return problems.anyError() ? null : once(reading, row, segment.orElseThrow(), year);
    }

    private static void refuse(RowReading reading, Field field, String value, FieldError error) {
        reading.problems().error(reading.columnOf().apply(field.key()), value, error.message());
    }

    private static @Nullable Integer modelYear(RowReading reading, RowDraft row) {
        Optional<FieldError> error = CatalogueRules.modelYear(row.modelYear());
        error.ifPresent(e -> reading.problems()
                .unreadable(
                        reading.columnOf().apply(Field.MODEL_YEAR.key()),
                        String.valueOf(row.modelYear()),
                        e.message()));
        return error.isPresent() ? null : row.modelYear();
    }

    private void checkReasons(RowReading reading, RowDraft row) {
        String setAside = row.setAside();
        if (setAside != null) {
            CatalogueRules.reason(setAside).ifPresent(error -> refuse(reading, Field.SET_ASIDE, setAside, error));
        }
        row.valuesSetAside().forEach((key, reason) -> {
            CatalogueRules.reason(reason)
                    .ifPresent(error -> refuse(reading, Field.VALUES_SET_ASIDE, key + ": " + reason, error));
            if (measures.find(key).isEmpty() && !row.dimensions().valueKeys().contains(key)) {
                reading.problems()
                        .error(
                                reading.columnOf().apply(Field.VALUES_SET_ASIDE.key()),
                                key,
                                "It is neither a measure nor a value that the row records.");
            }
        });
    }

    private @Nullable Accepted once(RowReading reading, RowDraft row, String segment, @Nullable Integer year) {
        Problems problems = reading.problems();
        int same = names.firstRow(row.name().strip() + "\n" + segment + "\n" + year, reading.row());
        if (same > 0) {
            problems.error(
                    reading.columnOf().apply(Field.NAME.key()),
                    row.name(),
                    "Row " + same + " has the same name, segment and model year.");
            return null;
        }
        List<RowProblem> leftOut = problems.found();
        List<String> questions = new ArrayList<>(row.queries());
        leftOut.stream().map(RowProblem::question).forEach(questions::add);
        PackageDraft draft = new PackageDraft(row.name(), segment, year, row.origin(), row.dimensions(), questions);
        row.queries().forEach(query -> problems.query(reading.columnOf().apply(Field.QUERIES.key()), "", query));
        draft.disagreements().forEach(d -> problems.query(String.join(", ", d.keys()), "", d.message()));
        prepared.accept(draft);
        return new Accepted(reading.row(), draft, row.setAside(), row.valuesSetAside(), row.named(), leftOut);
    }
}
