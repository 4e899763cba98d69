package studio.stancebook.exchange.web;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.importing.ColumnChoice;
import studio.stancebook.exchange.importing.ImportWizard;
import studio.stancebook.exchange.importing.PackageFile.TableSample;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.FieldErrors;

/**
 * The columns of a table with what is chosen for each.
 *
 * @param columns in order
 */
record MappingView(List<MappedColumn> columns) {

    private static final int SHOWN = 3;

    /**
     * One column.
     *
     * @param index from 0
     * @param heading its heading, or its letter where it has none
     * @param cells some of its cells
     * @param target the id of the target that is chosen; empty for none
     * @param extra the chosen target is not among those on offer; its id is shown as it is
     * @param unit the key of the unit that is chosen; empty for none
     * @param error what is wrong with the choice; null if nothing is
     */
    record MappedColumn(
            int index,
            String heading,
            String cells,
            String target,
            boolean extra,
            String unit,
            @Nullable String error) {}

    static MappingView of(
            TableSample sample, List<ColumnChoice> choices, List<TargetWords.TargetGroup> offered, FieldErrors errors) {
        return new MappingView(IntStream.range(0, choices.size())
                .mapToObj(i -> column(i, sample, choices.get(i), offered, errors))
                .toList());
    }

    private static MappedColumn column(
            int index,
            TableSample sample,
            ColumnChoice choice,
            List<TargetWords.TargetGroup> offered,
            FieldErrors errors) {
        List<String> cells = sample.columns().get(index);
        boolean known = choice.target().isEmpty()
                || offered.stream().anyMatch(group -> group.options().containsKey(choice.target()));
        return new MappedColumn(
                index,
                ImportWizard.heading(sample.headings(), index),
                String.join(
                        " | ",
                        cells.subList(0, Math.min(SHOWN, cells.size())).stream()
                                .map(TextLimit::shown)
                                .toList()),
                choice.target(),
                !known,
                choice.unit(),
                errors.on("column-" + index));
    }

    /** The errors of a mapping, each tied to the column that it is about or else to all of them. */
    static FieldErrors tied(List<FieldError> errors, List<String> headings) {
        return new FieldErrors(errors.stream()
                .map(error -> new FieldError(place(error.field(), headings), error.message()))
                .toList());
    }

    private static String place(String field, List<String> headings) {
        if (field.startsWith("column-")) {
            return field;
        }
        String heading = field.replaceFirst("^mapping\\.?", "");
        return IntStream.range(0, headings.size())
                .filter(i -> ImportWizard.heading(headings, i).equals(heading))
                .mapToObj(i -> "column-" + i)
                .findFirst()
                .orElse("columns");
    }
}
