package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.RowReading;

/** One reading of a whole file, some rows at a time: each is checked and those that come in are handed on. */
final class RowPass {

    /** Rows held at once; those with long outlines count for more. */
    private static final int AT_ONCE = 500;

    private final Catalogue catalogue;
    private final RowRules rules;
    private final boolean partial;
    private final ReportBuilder report = new ReportBuilder();
    private final Consumer<List<Accepted>> sink;
    private boolean atEnd;
    private double share;

    /**
     * @param partial whether rows still come in when others were refused
     * @param sink takes the rows that come in, some at a time
     */
    RowPass(Catalogue catalogue, RowRules rules, boolean partial, Consumer<List<Accepted>> sink) {
        this.catalogue = catalogue;
        this.rules = rules;
        this.partial = partial;
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
        Set<PackageName> taken = names.isEmpty() ? Set.of() : catalogue.taken(names);
        List<Checked> good = new ArrayList<>();
        for (Checked checked : batch) {
            Accepted accepted = checked.accepted();
            if (accepted != null && !isTaken(checked.row(), accepted, taken)) {
                good.add(checked);
            } else {
                report.rejected(checked.row().problems());
            }
        }
        if (!good.isEmpty()) {
            accept(good);
        }
    }

    private void accept(List<Checked> good) {
        List<Accepted> rows = new ArrayList<>();
        for (Checked checked : good) {
            Accepted accepted = Objects.requireNonNull(checked.accepted());
            rows.add(accepted);
            report.accepted(accepted.draft().segment(), checked.row().problems());
        }
        if (partial || report.rejected() == 0) {
            sink.accept(rows);
        }
    }

    private static boolean isTaken(RowReading row, Accepted accepted, Set<PackageName> taken) {
        boolean isTaken = taken.contains(accepted.draft().packageName());
        if (isTaken) {
            row.problems()
                    .error(
                            row.columnOf().apply(Field.NAME.key()),
                            accepted.draft().name(),
                            "The catalogue has a package of this name, segment and model year already.");
        }
        return isTaken;
    }
}
