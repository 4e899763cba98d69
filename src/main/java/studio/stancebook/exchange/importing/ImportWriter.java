package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.exchange.mapping.RowProblem;
import studio.stancebook.exchange.mapping.Severity;

/** Writes the rows of an import within its transaction, and has them seen against their classes at the end. */
final class ImportWriter {

    private final Catalogue catalogue;
    private final Segments segments;
    private final SegmentBook book;
    private final String by;
    private final Map<String, WrittenRows> bySegment = new TreeMap<>();
    private final List<Apart> apart = new ArrayList<>();
    private int segmentsMade;
    private int written;

    ImportWriter(Catalogue catalogue, Segments segments, SegmentBook book, String by) {
        this.catalogue = catalogue;
        this.segments = segments;
        this.book = book;
        this.by = by;
    }

    /** How many packages were written. */
    int written() {
        return written;
    }

    void write(List<Accepted> rows) {
        makeSegments();
        List<PackageDraft> drafts = rows.stream().map(Accepted::draft).toList();
        List<Long> ids = catalogue.addUnscreened(drafts, by);
        for (int i = 0; i < rows.size(); i++) {
            noteApart(ids.get(i), rows.get(i));
            bySegment
                    .computeIfAbsent(drafts.get(i).segment(), key -> new WrittenRows())
                    .add(ids.get(i), rows.get(i).row(), drafts.get(i).digest());
        }
        written += rows.size();
    }

    private void makeSegments() {
        Map<String, String> added = book.added();
        if (segmentsMade < added.size()) {
            added.forEach(segments::createIfMissing);
            segmentsMade = added.size();
        }
    }

    /** What is set aside of a package that was written. */
    private record Apart(long id, @Nullable String reason, Map<String, String> valueReasons) {}

    private void noteApart(long id, Accepted row) {
        if (row.setAside() != null || !row.valuesSetAside().isEmpty()) {
            apart.add(new Apart(id, row.setAside(), row.valuesSetAside()));
        }
    }

    /**
     * Sees the packages against their classes, and reports what a person should look at; then, as a person would, sets
     * aside what the file says is set aside.
     */
    void finish(ReportBuilder report, ImportProgress progress) {
        screen(report, progress);
        apart.forEach(this::setAside);
    }

    private void setAside(Apart row) {
        if (row.reason() != null) {
            catalogue.setAside(row.id(), row.reason(), by);
        }
        row.valueReasons().forEach((key, reason) -> catalogue.setValueAside(row.id(), key, reason, by));
    }

    private void screen(ReportBuilder report, ImportProgress progress) {
        int screened = 0;
        for (Map.Entry<String, WrittenRows> segment : bySegment.entrySet()) {
            WrittenRows rows = segment.getValue();
            new TreeMap<>(catalogue.screen(segment.getKey(), rows.written()))
                    .forEach((id, values) -> values.forEach(value -> report.query(
                            new RowProblem(rows.rowOf(id), value.key(), "", value.question(), Severity.QUERY))));
            screened += rows.size();
            progress.at(screened / (double) written);
        }
    }
}
