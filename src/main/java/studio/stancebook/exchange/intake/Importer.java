package studio.stancebook.exchange.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.measure.StudioMeasures;

/**
 * Brings packages in. The whole file is checked before anything is written; then it is read again and written in one
 * transaction, all or nothing. One import runs at a time, so that two cannot wait for each other's segments.
 */
@Component
public class Importer {

    /** How much of the work of an import is the checking. */
    private static final double CHECKING = 0.4;

    /** How much of the writing is done when all rows are read. */
    private static final double READING = 0.9;

    private final Catalogue catalogue;
    private final Segments segments;
    private final StudioMeasures measures;
    private final TransactionTemplate transaction;
    private final ImportTurn turn = new ImportTurn();

    Importer(Catalogue catalogue, Segments segments, StudioMeasures measures, PlatformTransactionManager transactions) {
        this.measures = measures;
        this.catalogue = catalogue;
        this.segments = segments;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * Checks a file and, unless only that is wished or a row is refused that may not be left out, writes it.
     *
     * @param by the name of who brings it in
     * @return what came of it; with {@code imported() == 0} where nothing was written
     * @throws studio.stancebook.problem.TooMany if other imports take too long
     * @throws studio.stancebook.problem.Refusal if the file as a whole cannot be read
     */
    public ImportReport run(PackageFile file, ImportOptions options, String by, ImportProgress progress) {
        return turn.take(() -> {
            double checking = options.dryRun() ? 1 : CHECKING;
            ImportReport checked = check(file, options, share -> progress.at(checking * share));
            boolean refused = checked.rejected() > 0 && !options.partial();
            return options.dryRun() || refused || checked.accepted() == 0
                    ? checked
                    : write(file, options, by, share -> progress.at(CHECKING + (1 - CHECKING) * share));
        });
    }

    private ImportReport check(PackageFile file, ImportOptions options, ImportProgress progress) {
        SegmentBook book = new SegmentBook(segments.all(), options.createSegments());
        return pass(file, options, new RowPass(catalogue, new RowRules(book, measures.current()), rows -> {}), progress)
                .build(book.newNames());
    }

    private ImportReport write(PackageFile file, ImportOptions options, String by, ImportProgress progress) {
        return Objects.requireNonNull(transaction.execute(status -> {
            SegmentBook book = new SegmentBook(segments.all(), options.createSegments());
            ImportWriter writer = new ImportWriter(catalogue, segments, book, by);
            ImportReport report = pass(
                            file,
                            options,
                            new RowPass(catalogue, new RowRules(book, measures.current()), writer::write),
                            share -> progress.at(READING * share))
                    .build(book.newNames());
            if (report.rejected() > 0 && !options.partial()) {
                status.setRollbackOnly();
                return report;
            }
            writer.finish(share -> progress.at(READING + (1 - READING) * share));
            return report.withImported(writer.written());
        }));
    }

    private static ReportBuilder pass(PackageFile file, ImportOptions options, RowPass pass, ImportProgress progress) {
        try (PackageRows rows = file.open(options)) {
            return pass.read(rows, progress);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
