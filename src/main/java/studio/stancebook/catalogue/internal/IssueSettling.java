package studio.stancebook.catalogue.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Author;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.SegmentIssue;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.NotFound;

/** Queries as people answer them. */
@Component
@Transactional
public class IssueSettling {

    private final DataIssues queries;
    private final StoredPackages packages;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    IssueSettling(DataIssues queries, StoredPackages packages, Clock clock, ApplicationEventPublisher events) {
        this.queries = queries;
        this.packages = packages;
        this.clock = clock;
        this.events = events;
    }

    public void settle(long packageId, long query, String answer, Author by) {
        String text = answer.strip();
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.answer(text).ifPresent(errors::add);
        CatalogueRules.refuse(errors);
        change(packageId, query, "query settled", (found, about) -> found.settle(text, by, clock.instant()));
    }

    public void reopen(long packageId, long query) {
        change(
                packageId,
                query,
                "query reopened",
                (found, about) -> found.reopen(about.segment().id()));
    }

    /** The value that a query is about; null when it is about the whole package. */
    @Transactional(readOnly = true)
    public @Nullable String valueKey(long packageId, long query) {
        return find(packageId, query).raised().valueKey();
    }

    /**
     * Settles the open queries that something was set aside for.
     *
     * @param asked about the package
     * @param keys of the values that do not count any more; null for the whole package
     * @return how many there were
     */
    int settleFor(List<DataIssue> asked, @Nullable Set<String> keys, String reason, Author by) {
        List<DataIssue> open = asked.stream()
                .filter(DataIssue::open)
                .filter(query -> keys == null || keys.contains(query.raised().valueKey()))
                .toList();
        open.forEach(query -> query.settle(CatalogueRules.shortened("Set aside: " + reason), by, clock.instant()));
        return open.size();
    }

    /** What was asked about each of some packages that somebody asked about. */
    @Transactional(readOnly = true)
    Map<Long, List<DataIssue>> askedAbout(Collection<Long> packageIds) {
        return queries.findAllByPackageIdInOrderById(packageIds).stream()
                .collect(Collectors.groupingBy(DataIssue::packageId));
    }

    List<DataIssue> askedAbout(long packageId) {
        return queries.findAllByPackageIdOrderById(packageId);
    }

    private void change(long packageId, long query, String action, BiConsumer<DataIssue, StoredPackage> change) {
        DataIssue found = find(packageId, query);
        StoredPackage about = packages.find(packageId).orElseThrow(() -> new UnknownPackage(packageId));
        FieldValues before = facts(found);
        change.accept(found, about);
        events.publishEvent(PackageEvents.of(action, about, before, facts(found)));
    }

    /** The question with its answer, so that the record says what was asked. */
    private static FieldValues facts(DataIssue query) {
        PackageIssue.Settlement settlement = query.view().settlement();
        return settlement == null
                ? FieldValues.of("query", query.raised().question())
                : FieldValues.of(
                        "query",
                        query.raised().question() + " "
                                + (settlement.answer().isEmpty() ? "Settled." : settlement.answer()));
    }

    private DataIssue find(long packageId, long query) {
        if (packages.segmentOf(packageId).isEmpty()) {
            throw new UnknownPackage(packageId);
        }
        return queries.findById(query)
                .filter(found -> found.packageId() == packageId)
                .orElseThrow(() -> new NotFound("query", query));
    }

    /** The open queries of a segment, newest first. */
    @Transactional(readOnly = true)
    public Page<SegmentIssue> open(long segmentId, Pageable page) {
        return queries.findOpen(segmentId, page)
                .map(row -> new SegmentIssue(
                        row.query().packageId(), row.packageName(), row.query().view()));
    }
}
