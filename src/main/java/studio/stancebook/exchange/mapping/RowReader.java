package studio.stancebook.exchange.mapping;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Edition;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Scale;
import studio.stancebook.exchange.table.TableRow;
import studio.stancebook.problem.CellGuard;

/**
 * Reads rows by a mapping. Name, segment and wheelbase must be there; any other value that cannot be read keeps the row
 * out or, if so wished, is left out with a query.
 */
public final class RowReader {

    private final Mapping mapping;
    private final boolean partial;
    private final Origin origin;
    private final ColumnUse wheelbaseUse;

    /**
     * @param partial true when an optional value that cannot be read is left out
     * @param origin of rows that name none
     */
    public RowReader(Mapping mapping, boolean partial, Origin origin) {
        this.mapping = mapping;
        this.partial = partial;
        this.origin = origin;
        this.wheelbaseUse = mapping.uses().stream()
                .filter(use -> use.target().sets().contains(Dimension.WHEELBASE.key()))
                .findFirst()
                .orElseThrow();
    }

    /** Reads one row; never throws for what is in it. */
    public RowReading read(TableRow row) {
        Problems problems = new Problems(row.number(), vehicle(row), partial);
        if (row.fault() != null) {
            problems.error("", "", row.fault());
            return new RowReading(row.number(), null, problems, this::column, row);
        }
        RowDraft draft = draft(new CellReader(row, problems), problems);
        return new RowReading(row.number(), problems.anyError() ? null : draft, problems, this::column, row);
    }

    /** Reads what a row says of its segment alone. */
    public NamedSegment segment(TableRow row) {
        if (row.fault() != null) {
            return NamedSegment.NONE;
        }
        Problems unread = new Problems(row.number(), "", partial);
        FieldCells fields = new FieldCells(mapping, new CellReader(row, unread), unread);
        return new NamedSegment(fields.text(Field.SEGMENT), fields.text(Field.SEGMENT_NAME));
    }

    private String vehicle(TableRow row) {
        return mapping.field(Field.NAME)
                .map(use -> CellGuard.unguarded(row.cell(use.index()).stripped()))
                .orElse("");
    }

    private String column(String field) {
        return Field.ofKey(field)
                .flatMap(mapping::field)
                .map(ColumnUse::heading)
                .orElse(field);
    }

    private @Nullable RowDraft draft(CellReader cells, Problems problems) {
        FieldCells fields = new FieldCells(mapping, cells, problems);
        String name = fields.required(Field.NAME);
        String segment = fields.required(Field.SEGMENT);
        OptionalDouble wheelbase = cells.requiredNumber(wheelbaseUse);
        if (wheelbase.isEmpty()) {
            return null;
        }
        Origin rowOrigin = fields.choice(Field.ORIGIN, List.of(Origin.values()), Origin::key)
                .orElse(origin);
        String setAside = fields.text(Field.SET_ASIDE);
        RowDraft draft = new RowDraft(
                name,
                segment,
                fields.text(Field.SEGMENT_NAME),
                fields.modelYear(),
                rowOrigin,
                dimensions(wheelbase.getAsDouble(), rowOrigin, fields, cells, problems),
                setAside.isEmpty() ? null : setAside,
                PackedText.parseLines(fields.text(Field.VALUES_SET_ASIDE)),
                fields.lines(Field.QUERIES),
                fields.named());
        cells.queryFormulas();
        return draft;
    }

    private DimensionSet dimensions(
            double wheelbase, Origin rowOrigin, FieldCells fields, CellReader cells, Problems problems) {
        DimensionSetBuilder builder = DimensionSet.builder().origin(rowOrigin).set(Dimension.WHEELBASE, wheelbase);
        fields.choice(Field.SCALE, List.of(Scale.values()), Scale::key).ifPresent(builder::scale);
        fields.choice(Field.EDITION, List.of(Edition.values()), Edition::key).ifPresent(builder::edition);
        new DimensionCells(mapping.uses(), cells, problems, builder).read();
        fields.uncertainties().forEach(builder::uncertainty);
        fields.origins().forEach(builder::origin);
        return PlausibleCells.values(
                builder.build(), mapping::headingsOf, key -> cells.texts(mapping.of(key)), problems);
    }
}
