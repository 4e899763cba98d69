package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.RowReading;

/** One reading of a whole file, some rows at a time: each is checked and those that come in are handed on. */
final class RowPass {

    /** Rows held at once; those with long outlines count for more. */
    private static final int AT_ONCE = 500;

    private final Catalogue catalogue;
    private final RowRules rules;
    private final ImportOptions options;
    private final ReportBuilder report = new ReportBuilder();
    private final Consumer<RowBatch> sink;
    private final Consumer<RowReading> refused;
    private boolean atEnd;
    private double share;

    /**
     * @param options whether rows still come in when others were refused, and whether they may change what is there
     * @param refused takes the rows that do not
     * @param sink takes the rows that come in, some at a time
     */
    RowPass(
            Catalogue catalogue,
            RowRules rules,
            ImportOptions options,
            Consumer<RowBatch> sink,
            Consumer<RowReading> refused) {
        this.refused = refused;
        this.catalogue = catalogue;
        this.rules = rules;
        this.options = options;
        this.sink = sink;
    }

    /** Reads to the end; the rows that come next are read and checked while some are written. */
    ReportBuilder read(PackageRows rows, ImportProgress progress) {
        try (ReadAhead<Batch> batches = new ReadAhead<>(() -> batch(rows))) {
            Runnable stillThere = () -> progress.at(share);
            for (Batch batch = batches.next(stillThere); batch != null; batch = batches.next(stillThere)) {
                finish(batch.rows());
                share = batch.share();
                progress.at(share);
            }
        }
        progress.at(1);
        return report;
    }

    private record Checked(RowReading row, @Nullable Accepted accepted) {}

    /** @param share how much of the file is behind, from 0 to 1 */
    private record Batch(List<Checked> rows, double share) {}

    private @Nullable Batch batch(PackageRows rows) {
        List<Checked> batch = new ArrayList<>();
        for (int weight = 0; weight < AT_ONCE && !atEnd; ) {
            RowReading row = rows.next();
            if (row == null) {
                atEnd = true;
                break;
            }
            batch.add(new Checked(row, rules.apply(row)));
            weight += row.weight();
        }
        return batch.isEmpty() ? null : new Batch(batch, rows.share());
    }

    private void finish(List<Checked> batch) {
        Set<PackageName> names = new HashSet<>();
        for (Checked checked : batch) {
            if (checked.accepted() != null) {
                names.add(checked.accepted().draft().packageName());
            }
        }
        RowBatch good = new RowBatch(new ArrayList<>(), new ArrayList<>());
        if (options.update()) {
            Map<PackageName, PackageView> there = catalogue.named(names);
            batch.forEach(checked -> sortByWhatIsThere(checked, there, good));
        } else {
            Set<PackageName> taken = names.isEmpty() ? Set.of() : catalogue.taken(names);
            batch.forEach(checked -> sortByName(checked, taken, good));
        }
        if (!good.isEmpty() && (options.partial() || report.rejected() == 0)) {
            sink.accept(good);
        }
    }

    private void reject(RowReading row) {
        report.rejected(row.problems());
        refused.accept(row);
    }

    private void sortByName(Checked checked, Set<PackageName> taken, RowBatch good) {
        Accepted accepted = checked.accepted();
        if (accepted != null && !isTaken(checked.row(), accepted, taken)) {
            good.added().add(accepted);
            report.accepted(accepted.draft().segment(), checked.row().problems());
        } else {
            reject(checked.row());
        }
    }

    private void sortByWhatIsThere(Checked checked, Map<PackageName, PackageView> there, RowBatch good) {
        Accepted accepted = checked.accepted();
        PackageView known = accepted == null ? null : there.get(accepted.draft().packageName());
        if (accepted == null || known == null) {
            sortByName(checked, Set.of(), good);
            return;
        }
        RowUpdate update = RowUpdate.of(accepted, known);
        if (update.unchanged()) {
            report.unchanged(accepted.leftOut());
        } else if (isInRange(checked.row(), update)) {
            good.updated().add(update);
            report.accepted(known.segment(), checked.row().problems());
            report.updated(update.change(), known.version());
        } else {
            reject(checked.row());
        }
    }

    /** What a row changes may be in range by itself and not with what is recorded, such as another scale. */
    private static boolean isInRange(RowReading row, RowUpdate update) {
        if (update.update() != null) {
            RangeChecks.problemsOf(update.update().draft().dimensions())
                    .forEach(error -> row.problems().error(error.field(), "", error.message()));
        }
        return !row.problems().anyError();
    }

    private static boolean isTaken(RowReading row, Accepted accepted, Set<PackageName> taken) {
        boolean isTaken = taken.contains(accepted.draft().packageName());
        if (isTaken) {
            row.problems()
                    .error(
                            row.columnOf().apply(Field.NAME.key()),
                            accepted.draft().name(),
                            "The catalogue has a package of this name, segment and model year already."
                                    + " Rename it, or update those that exist.");
        }
        return isTaken;
    }
}
