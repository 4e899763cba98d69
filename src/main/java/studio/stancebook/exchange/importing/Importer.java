package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Preparation;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.Conflict;

/**
 * Brings packages in. A file is checked and written row by row in one transaction, all or nothing: what was written before
 * a row was refused is taken back. One import runs at a time, so that two cannot wait for each other's segments.
 */
@Component
public class Importer {

    /** How much of the work is done when all rows are read. */
    private static final double READING = 0.9;

    private final Catalogue catalogue;
    private final Segments segments;
    private final StudioMeasures measures;
    private final Preparation preparation;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher events;
    private final ImportMeters meters;
    private final ImportTurn turn = new ImportTurn();
    private final MemoryLimit limit = new MemoryLimit(Runtime.getRuntime().maxMemory());

    Importer(
            Catalogue catalogue,
            Segments segments,
            StudioMeasures measures,
            Preparation preparation,
            PlatformTransactionManager transactions,
            ApplicationEventPublisher events,
            ImportMeters meters) {
        this.meters = meters;
        this.events = events;
        this.measures = measures;
        this.preparation = preparation;
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
            List<SegmentView> known = segments.all();
            SegmentBook book = new SegmentBook(known, options.createSegments(), options.segments());
            long there = known.stream().mapToLong(SegmentView::packages).sum();
            limit.check(delivery.content(), options, there, book::note);
            return write(delivery, options, book, there, progress);
        });
    }

    /**
     * Writes row by row as it checks, and takes all of it back after a dry run, or when a row is refused that may not be left
     * out.
     */
    private ImportReport write(
            Delivery delivery, ImportOptions options, SegmentBook book, long there, ImportProgress progress) {
        return Objects.requireNonNull(transaction.execute(status -> {
            ImportWriter writer = new ImportWriter(catalogue, segments, book, delivery.by());
            writer.begin();
            ReportBuilder report = pass(delivery, options, book, writer::write, share -> progress.at(READING * share));
            boolean refused = report.rejected() > 0 && !options.partial();
            if (!options.dryRun() && options.seen() != null) {
                requireAsSeen(options.seen(), report.build(book));
            }
            if (refused || writer.written() == 0) {
                status.setRollbackOnly();
                return report.build(book);
            }
            limit.requireRoom(there, writer.added());
            writer.finish(report, share -> progress.at(READING + (1 - READING) * share));
            if (options.dryRun()) {
                status.setRollbackOnly();
                return report.build(book);
            }
            ImportReport done = report.build(book).withImported(writer.written());
            tell(delivery, done);
            return done;
        }));
    }

    /** What a person has seen of the changes is what is written, or nothing. */
    private static void requireAsSeen(String seen, ImportReport now) {
        if (!seen.equals(now.state())) {
            throw new Conflict("Packages that the file changes are not as they were when it was checked."
                    + " Check it again, and look at the differences.");
        }
    }

    /** One event for the whole file; each package that it changes has its own beside it. */
    private void tell(Delivery delivery, ImportReport done) {
        String digest = delivery.digest();
        FieldValues facts = FieldValues.of("file", delivery.fileName())
                .and("sha256", digest)
                .and("rows", done.rows())
                .and("broughtIn", done.imported())
                .and("updated", done.updated() == 0 ? "" : done.updated())
                .and("rejected", done.rejected())
                .and("queries", done.queries())
                .and("newSegments", String.join(", ", done.newSegments()));
        events.publishEvent(ActivityEvent.of(
                "brought in", "packages", digest.substring(0, 12), delivery.fileName(), FieldValues.none(), facts));
    }

    private ReportBuilder pass(
            Delivery delivery,
            ImportOptions options,
            SegmentBook book,
            Consumer<RowBatch> sink,
            ImportProgress progress) {
        RowRules rules = new RowRules(book, measures.current(), preparation.now());
        RowPass pass = new RowPass(catalogue, rules, options, sink, delivery.refused());
        try (PackageRows rows = delivery.content().open(options)) {
            return pass.read(rows, progress);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
