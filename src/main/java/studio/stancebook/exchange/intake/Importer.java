package studio.stancebook.exchange.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageDraft;
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
            Writer writer = new Writer(book, by);
            ImportReport report = pass(
                            file,
                            options,
                            new RowPass(catalogue, new RowRules(book, measures.current()), writer::write),
                            progress)
                    .build(book.newNames());
            if (report.rejected() > 0 && !options.partial()) {
                status.setRollbackOnly();
                return report;
            }
            return report.withImported(writer.written);
        }));
    }

    private static ReportBuilder pass(PackageFile file, ImportOptions options, RowPass pass, ImportProgress progress) {
        try (PackageRows rows = file.open(options)) {
            return pass.read(rows, progress);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Writes rows within the transaction of an import. */
    private final class Writer {

        private final SegmentBook book;
        private final String by;
        private int segmentsMade;
        private int written;

        Writer(SegmentBook book, String by) {
            this.book = book;
            this.by = by;
        }

        void write(List<Accepted> rows) {
            makeSegments();
            List<PackageDraft> drafts = rows.stream().map(Accepted::draft).toList();
            List<Long> ids = catalogue.addAll(drafts, by);
            for (int i = 0; i < rows.size(); i++) {
                setAside(ids.get(i), rows.get(i));
            }
            written += rows.size();
        }

        private void makeSegments() {
            if (segmentsMade < book.added().size()) {
                book.added().forEach(segments::createIfMissing);
                segmentsMade = book.added().size();
            }
        }

        private void setAside(long id, Accepted row) {
            if (row.setAside() != null) {
                catalogue.setAside(id, row.setAside(), by);
            }
            row.valuesSetAside().forEach((key, reason) -> catalogue.setValueAside(id, key, reason, by));
        }
    }
}
