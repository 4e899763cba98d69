package studio.stancebook.catalogue.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.account.Facts;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.PackageQuery;
import studio.stancebook.catalogue.SegmentQuery;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.NotFound;

/** Queries as people answer them. */
@Component
@Transactional
public class QuerySettling {

    private final StoredQueries queries;
    private final StoredPackages packages;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    QuerySettling(StoredQueries queries, StoredPackages packages, Clock clock, ApplicationEventPublisher events) {
        this.queries = queries;
        this.packages = packages;
        this.clock = clock;
        this.events = events;
    }

    public void settle(long packageId, long query, String answer, String by) {
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

    private void change(long packageId, long query, String action, BiConsumer<StoredQuery, StoredPackage> change) {
        StoredQuery found = find(packageId, query);
        StoredPackage about = packages.find(packageId).orElseThrow(() -> new UnknownPackage(packageId));
        Facts before = facts(found);
        change.accept(found, about);
        events.publishEvent(PackageDeeds.of(action, about, before, facts(found)));
    }

    /** The question with its answer, so that the record says what was asked. */
    private static Facts facts(StoredQuery query) {
        PackageQuery.Settlement settlement = query.view().settlement();
        return settlement == null
                ? Facts.of("query", query.raised().question())
                : Facts.of(
                        "query",
                        query.raised().question() + " "
                                + (settlement.answer().isEmpty() ? "Settled." : settlement.answer()));
    }

    private StoredQuery find(long packageId, long query) {
        if (packages.segmentOf(packageId).isEmpty()) {
            throw new UnknownPackage(packageId);
        }
        return queries.findById(query)
                .filter(found -> found.packageId() == packageId)
                .orElseThrow(() -> new NotFound("query", query));
    }

    /** The open queries of a segment, newest first. */
    @Transactional(readOnly = true)
    public Page<SegmentQuery> open(long segmentId, Pageable page) {
        return queries.findOpen(segmentId, page)
                .map(row -> new SegmentQuery(
                        row.query().packageId(), row.packageName(), row.query().view()));
    }
}
