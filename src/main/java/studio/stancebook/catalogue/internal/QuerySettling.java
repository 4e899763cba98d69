package studio.stancebook.catalogue.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.catalogue.CatalogueRules;
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

    QuerySettling(StoredQueries queries, StoredPackages packages, Clock clock) {
        this.queries = queries;
        this.packages = packages;
        this.clock = clock;
    }

    public void settle(long packageId, long query, String answer, String by) {
        String text = answer.strip();
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.answer(text).ifPresent(errors::add);
        CatalogueRules.refuse(errors);
        find(packageId, query).settle(text, by, clock.instant());
    }

    public void reopen(long packageId, long query) {
        find(packageId, query).reopen();
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
    public Page<SegmentQuery> open(String segment, Pageable page) {
        return queries.findOpen(segment, page)
                .map(row -> new SegmentQuery(
                        row.query().packageId(), row.packageName(), row.query().view()));
    }
}
