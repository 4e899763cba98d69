package studio.stancebook.web.board;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import studio.stancebook.catalogue.PackageChange;
import studio.stancebook.proposal.ProposalSummary;

/**
 * Something that changed, or several things that one person changed together.
 *
 * @param kind {@code proposal} or {@code package}
 * @param place the address of its page; of the catalogue for several
 * @param more how many others of its kind changed with it
 */
record BoardChange(String kind, String name, String segment, String place, String by, Instant at, int more) {

    /** What one person changes within it is one piece of news. */
    private static final Duration TOGETHER = Duration.ofHours(1);

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ENGLISH).withZone(ZoneOffset.UTC);

    /** The time of the change in words, UTC. */
    public String when() {
        return WHEN.format(at);
    }

    /** How many changed. */
    public int count() {
        return more + 1;
    }

    static BoardChange of(ProposalSummary proposal) {
        return new BoardChange(
                "proposal",
                proposal.name(),
                proposal.segment().name(),
                "/proposals/" + proposal.id(),
                proposal.changedBy(),
                proposal.changedAt(),
                0);
    }

    static BoardChange of(PackageChange benchmark) {
        return new BoardChange(
                "package",
                benchmark.name(),
                benchmark.segmentName(),
                "/packages/" + benchmark.id(),
                benchmark.by(),
                benchmark.at(),
                0);
    }

    /** Packages that one person changed soon after each other as one change; proposals each by itself. */
    static List<BoardChange> together(List<BoardChange> newestFirst) {
        List<BoardChange> grouped = new ArrayList<>();
        for (BoardChange change : newestFirst) {
            BoardChange last = grouped.isEmpty() ? null : grouped.get(grouped.size() - 1);
            if (last != null && last.isNewsWith(change)) {
                grouped.set(grouped.size() - 1, last.with(change));
            } else {
                grouped.add(change);
            }
        }
        return grouped;
    }

    private boolean isNewsWith(BoardChange earlier) {
        return kind.equals("package")
                && earlier.kind.equals(kind)
                && earlier.by.equals(by)
                && Duration.between(earlier.at, at).compareTo(TOGETHER) < 0;
    }

    private BoardChange with(BoardChange earlier) {
        String where = earlier.segment.equals(segment) ? segment : "";
        return new BoardChange(kind, name, where, "/catalogue?sort=changedAt,desc", by, at, more + 1 + earlier.more);
    }
}
