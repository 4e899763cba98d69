package studio.stancebook.exchange.importing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import studio.stancebook.exchange.mapping.Problems;
import studio.stancebook.exchange.mapping.RowProblem;

/** Counts rows and keeps the first of their problems, errors apart from queries so that neither crowds out the other. */
final class ReportBuilder {

    /** Most errors, and most queries, that are listed. */
    static final int MOST_LISTED = 500;

    private final List<RowProblem> errors = new ArrayList<>();
    private final List<RowProblem> queries = new ArrayList<>();
    private final Set<String> segments = new HashSet<>();
    private int rows;
    private int rejected;
    private int allErrors;
    private int allQueries;
    private final List<RowChange> changes = new ArrayList<>();
    private final MessageDigest digest = KeyIndex.sha256();
    private byte[] state = {};
    private int updated;
    private int unchanged;

    /** Takes a row that stays out; queries about it are of no use then. */
    void rejected(Problems problems) {
        rows++;
        rejected++;
        problems.found().stream().filter(RowProblem::error).forEach(problem -> {
            allErrors++;
            if (errors.size() < MOST_LISTED) {
                errors.add(problem);
            }
        });
        allErrors += problems.moreErrors();
    }

    /** Takes a row that comes in, into the segment of this key. */
    void accepted(String segment, Problems problems) {
        rows++;
        segments.add(segment);
        problems.found().forEach(this::query);
        allQueries += problems.moreQueries();
    }

    /** Takes a row that changes a package of this version; it is taken as accepted too. */
    void updated(RowChange change, long version) {
        updated++;
        digest.update(state);
        state = digest.digest((change.packageId() + " " + version).getBytes(StandardCharsets.UTF_8));
        if (changes.size() < MOST_LISTED) {
            changes.add(change);
        }
    }

    /** Takes a row that says what is recorded already, with what of it could not be read. */
    void unchanged(List<RowProblem> leftOut) {
        rows++;
        unchanged++;
        leftOut.forEach(this::query);
    }

    /** Takes a query about a row that came in, which was found only when all were there. */
    void query(RowProblem problem) {
        allQueries++;
        if (queries.size() < MOST_LISTED) {
            queries.add(problem);
        }
    }

    /** The keys of the segments of all rows that come in. */
    Set<String> segments() {
        return Set.copyOf(segments);
    }

    /** How many rows stay out. */
    int rejected() {
        return rejected;
    }

    ImportReport build(SegmentBook book) {
        List<RowProblem> listed = new ArrayList<>(errors);
        listed.addAll(queries);
        listed.sort(Comparator.comparingLong(RowProblem::row));
        return new ImportReport(
                rows,
                rows - rejected - unchanged,
                rejected,
                updated,
                unchanged,
                allErrors,
                allQueries,
                0,
                book.newNames(segments),
                book.missing(),
                listed,
                allErrors + allQueries - listed.size(),
                changes,
                updated - changes.size(),
                HexFormat.of().formatHex(state));
    }
}
