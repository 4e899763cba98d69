package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Author;
import studio.stancebook.exchange.importing.PackageFile.TableSample;
import studio.stancebook.exchange.mapping.ColumnUnit;
import studio.stancebook.exchange.mapping.ColumnUse;
import studio.stancebook.exchange.mapping.Guess;
import studio.stancebook.exchange.mapping.ImpossibleMapping;
import studio.stancebook.exchange.mapping.Mapping;
import studio.stancebook.exchange.mapping.MappingJson;
import studio.stancebook.exchange.mapping.Target;
import studio.stancebook.exchange.mapping.Targets;
import studio.stancebook.exchange.table.CellReference;
import studio.stancebook.exchange.table.TableFile;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;

/** What people do with their upload step by step: see it, say what its columns hold, check it, bring it in. */
@Component
public class ImportWizard {

    private final ImportJobs jobs;

    ImportWizard(ImportJobs jobs) {
        this.jobs = jobs;
    }

    /** The beginning of the table. */
    public TableSample sample(TableFile table, @Nullable String sheet) {
        try {
            return TableSample.of(table, sheet);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** What is chosen for each column: as somebody chose, else as it is guessed. */
    public List<ColumnChoice> choices(Upload upload, TableSample sample) {
        List<ColumnChoice> chosen = upload.choices();
        return chosen != null && chosen.size() == sample.headings().size()
                ? chosen
                : sample.guesses().stream().map(ImportWizard::choice).toList();
    }

    private static ColumnChoice choice(Optional<Guess> guess) {
        return guess.map(g -> new ColumnChoice(
                        g.target().id(), g.unit() == null ? "" : g.unit().key()))
                .orElse(ColumnChoice.NONE);
    }

    /**
     * Starts a run by what is chosen.
     *
     * @throws ImpossibleMapping naming every column whose choice cannot be, as {@code column-2}
     */
    public void start(Upload upload, ImportOptions options, Author by) {
        jobs.start(upload, file(upload), options, by);
    }

    private PackageFile file(Upload upload) {
        TableFile table = upload.table();
        if (table == null) {
            return new PackageFile.OfJson(upload.path());
        }
        TableSample sample = sample(table, upload.sheet());
        return new PackageFile.OfTable(table, upload.sheet(), mapping(sample.headings(), choices(upload, sample)));
    }

    private static Mapping mapping(List<String> headings, List<ColumnChoice> choices) {
        List<ColumnUse> uses = new ArrayList<>();
        List<FieldError> errors = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            ColumnChoice choice = choices.get(i);
            if (!choice.target().isEmpty()) {
                use(i, heading(headings, i), choice, uses, errors);
            }
        }
        if (!errors.isEmpty()) {
            throw new ImpossibleMapping(ErrorList.of(errors));
        }
        return new Mapping(uses);
    }

    private static void use(
            int index, String heading, ColumnChoice choice, List<ColumnUse> uses, List<FieldError> errors) {
        Target target = Targets.ofId(choice.target()).orElse(null);
        Optional<ColumnUnit> unit = ColumnUnit.ofKey(choice.unit());
        if (target == null) {
            errors.add(new FieldError("column-" + index, "There is nothing of this name for a column to hold."));
        } else if (!MappingJson.takesUnit(target)) {
            uses.add(new ColumnUse(index, heading, target, ColumnUnit.NONE));
        } else if (unit.isEmpty() || !MappingJson.fits(target, unit.get())) {
            errors.add(new FieldError(
                    "column-" + index,
                    "The column \"" + TextLimit.shown(heading) + "\" holds numbers in a unit: choose one of "
                            + MappingJson.unitsOf(target) + "."));
        } else {
            uses.add(new ColumnUse(index, heading, target, unit.get()));
        }
    }

    /** The heading of a column as pages and messages name it. */
    public static String heading(List<String> headings, int index) {
        String heading = headings.get(index);
        return heading.isEmpty() ? "column " + CellReference.letters(index) : heading;
    }
}
