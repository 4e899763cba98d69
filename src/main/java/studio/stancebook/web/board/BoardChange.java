package studio.stancebook.web.board;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import studio.stancebook.catalogue.PackageChange;
import studio.stancebook.proposal.ProposalSummary;

/**
 * Something that changed.
 *
 * @param kind {@code proposal} or {@code package}
 * @param place the address of its page
 */
record BoardChange(String kind, String name, String segment, String place, String by, Instant at) {

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ENGLISH).withZone(ZoneOffset.UTC);

    /** The time of the change in words, UTC. */
    public String when() {
        return WHEN.format(at);
    }

    static BoardChange of(ProposalSummary proposal) {
        return new BoardChange(
                "proposal",
                proposal.name(),
                proposal.segment().name(),
                "/proposals/" + proposal.id(),
                proposal.changedBy(),
                proposal.changedAt());
    }

    static BoardChange of(PackageChange benchmark) {
        return new BoardChange(
                "package",
                benchmark.name(),
                benchmark.segmentName(),
                "/packages/" + benchmark.id(),
                benchmark.by(),
                benchmark.at());
    }
}
