package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.AsideDraft;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.NewPackage;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageUpdate;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.exchange.mapping.RowProblem;
import studio.stancebook.exchange.mapping.Severity;
import studio.stancebook.problem.TooLarge;

/** Writes the rows of an import within its transaction, and has them seen against their classes at the end. */
final class ImportWriter {

    /** More changes of packages than this are not taken from one file. */
    static final int MOST_CHANGED = 10_000;

    private final Catalogue catalogue;
    private final Segments segments;
    private final SegmentBook book;
    private final Author by;
    private final Map<String, WrittenRows> bySegment = new TreeMap<>();
    private final List<AsideDraft> aside = new ArrayList<>();
    private final Map<String, List<NewPackage>> changedBySegment = new TreeMap<>();
    private final Map<Long, Long> rowOfChanged = new HashMap<>();
    private final List<AsideDraft> asideAgain = new ArrayList<>();
    private int written;
    private int changed;

    ImportWriter(Catalogue catalogue, Segments segments, SegmentBook book, Author by) {
        this.catalogue = catalogue;
        this.segments = segments;
        this.book = book;
        this.by = by;
    }

    /** How many packages were added or changed. */
    int written() {
        return written;
    }

    /** How many packages were added. */
    int added() {
        return written - changed;
    }

    /** Locks every segment that the file names, and makes those that are not there. */
    void begin() {
        segments.lock(book.there());
        segments.prepare(book.added());
    }

    void write(RowBatch batch) {
        if (!batch.added().isEmpty()) {
            add(batch.added());
        }
        if (!batch.updated().isEmpty()) {
            change(batch.updated());
        }
    }

    private void change(List<RowUpdate> rows) {
        written += rows.size();
        changed += rows.size();
        if (changed > MOST_CHANGED) {
            throw new TooLarge("The file changes more than " + MOST_CHANGED
                    + " packages, each of which is a line of its own in the activity record; send it in parts.");
        }
        List<PackageUpdate> updates = new ArrayList<>();
        for (RowUpdate row : rows) {
            PackageUpdate update = row.update();
            if (update != null) {
                updates.add(update);
                changedBySegment
                        .computeIfAbsent(update.draft().segment(), key -> new ArrayList<>())
                        .add(new NewPackage(update.id(), update.draft().digest()));
                rowOfChanged.put(update.id(), row.change().row());
            }
            if (row.aside() != null) {
                asideAgain.add(row.aside());
            }
        }
        if (!updates.isEmpty()) {
            catalogue.changeAll(updates, by);
        }
    }

    private void add(List<Accepted> rows) {
        List<PackageDraft> drafts = rows.stream().map(Accepted::draft).toList();
        List<Long> ids = catalogue.addUnscreened(drafts, by);
        for (int i = 0; i < rows.size(); i++) {
            noteAside(ids.get(i), rows.get(i));
            bySegment
                    .computeIfAbsent(drafts.get(i).segment(), key -> new WrittenRows())
                    .add(ids.get(i), rows.get(i).row(), drafts.get(i).digest());
        }
        written += rows.size();
    }

    private void noteAside(long id, Accepted row) {
        if (row.setAside() != null || !row.valuesSetAside().isEmpty()) {
            aside.add(new AsideDraft(id, row.setAside(), row.valuesSetAside()));
        }
    }

    /**
     * Sees the packages against their classes, and reports what a person should look at; then, as a person would, sets
     * aside what the file says is set aside. New segments that no row came into are taken back.
     */
    void finish(ReportBuilder report, ImportProgress progress) {
        screen(report, progress);
        screenChanged(report);
        catalogue.setAside(aside, by);
        asideAgain.forEach(draft -> catalogue.setAsideAgain(draft, by));
        segments.keep(book.added().keySet(), report.segments());
    }

    private void screenChanged(ReportBuilder report) {
        changedBySegment.forEach((segment, packages) ->
                query(report, catalogue.screenChanged(segment, packages), id -> rowOfChanged.getOrDefault(id, 0L)));
    }

    private void screen(ReportBuilder report, ImportProgress progress) {
        int screened = 0;
        for (Map.Entry<String, WrittenRows> segment : bySegment.entrySet()) {
            WrittenRows rows = segment.getValue();
            query(report, catalogue.screen(segment.getKey(), rows.written()), rows::rowOf);
            screened += rows.size();
            progress.at(screened / (double) written);
        }
    }

    private void query(ReportBuilder report, Map<Long, List<Catalogue.Screened>> asked, LongUnaryOperator rowOf) {
        Map<Long, String> names = catalogue.names(asked.keySet());
        new TreeMap<>(asked)
                .forEach((id, values) -> values.forEach(value -> report.query(new RowProblem(
                        rowOf.applyAsLong(id),
                        names.getOrDefault(id, ""),
                        value.key(),
                        "",
                        value.question(),
                        Severity.QUERY))));
    }
}
