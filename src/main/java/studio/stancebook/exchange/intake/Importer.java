package studio.stancebook.exchange.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.account.Deed;
import studio.stancebook.account.Facts;
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
    private final ApplicationEventPublisher events;
    private final ImportMeters meters;
    private final ImportTurn turn = new ImportTurn();

    Importer(
            Catalogue catalogue,
            Segments segments,
            StudioMeasures measures,
            PlatformTransactionManager transactions,
            ApplicationEventPublisher events,
            ImportMeters meters) {
        this.meters = meters;
        this.events = events;
        this.measures = measures;
        this.catalogue = catalogue;
        this.segments = segments;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * Checks a file and, unless only that is wished or a row is refused that may not be left out, writes it.
     *
     * @return what came of it; with {@code imported() == 0} where nothing was written
     * @throws studio.stancebook.problem.TooMany if other imports take too long
     * @throws studio.stancebook.problem.Refusal if the file as a whole cannot be read
     */
    public ImportReport run(Delivery delivery, ImportOptions options, ImportProgress progress) {
        return options.dryRun()
                ? inTurn(delivery, options, progress)
                : meters.count(() -> inTurn(delivery, options, progress));
    }

    private ImportReport inTurn(Delivery delivery, ImportOptions options, ImportProgress progress) {
        return turn.take(() -> {
            double checking = options.dryRun() ? 1 : CHECKING;
            ImportReport checked = check(delivery.content(), options, share -> progress.at(checking * share));
            boolean refused = checked.rejected() > 0 && !options.partial();
            return options.dryRun() || refused || checked.accepted() == 0
                    ? checked
                    : write(delivery, options, share -> progress.at(CHECKING + (1 - CHECKING) * share));
        });
    }

    private ImportReport check(PackageFile file, ImportOptions options, ImportProgress progress) {
        SegmentBook book = new SegmentBook(segments.all(), options.createSegments());
        return pass(file, options, new RowPass(catalogue, new RowRules(book, measures.current()), rows -> {}), progress)
                .build(book.newNames());
    }

    private ImportReport write(Delivery delivery, ImportOptions options, ImportProgress progress) {
        return Objects.requireNonNull(transaction.execute(status -> {
            SegmentBook book = new SegmentBook(segments.all(), options.createSegments());
            ImportWriter writer = new ImportWriter(catalogue, segments, book, delivery.by());
            ImportReport report = pass(
                            delivery.content(),
                            options,
                            new RowPass(catalogue, new RowRules(book, measures.current()), writer::write),
                            share -> progress.at(READING * share))
                    .build(book.newNames());
            if (report.rejected() > 0 && !options.partial()) {
                status.setRollbackOnly();
                return report;
            }
            writer.finish(share -> progress.at(READING + (1 - READING) * share));
            ImportReport done = report.withImported(writer.written());
            tell(delivery, done);
            return done;
        }));
    }

    /** One deed for the whole file. */
    private void tell(Delivery delivery, ImportReport done) {
        String digest = delivery.digest();
        Facts facts = Facts.of("file", delivery.fileName())
                .and("sha256", digest)
                .and("rows", done.rows())
                .and("broughtIn", done.imported())
                .and("rejected", done.rejected())
                .and("queries", done.queries())
                .and("newSegments", String.join(", ", done.newSegments()));
        events.publishEvent(
                Deed.of("brought in", "packages", digest.substring(0, 12), delivery.fileName(), Facts.none(), facts));
    }

    private static ReportBuilder pass(PackageFile file, ImportOptions options, RowPass pass, ImportProgress progress) {
        try (PackageRows rows = file.open(options)) {
            return pass.read(rows, progress);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
