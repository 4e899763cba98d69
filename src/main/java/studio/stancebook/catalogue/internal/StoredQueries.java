package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The questions about packages. */
interface StoredQueries extends Repository<StoredQuery, Long> {

    StoredQuery save(StoredQuery query);

    void delete(StoredQuery query);

    Optional<StoredQuery> findById(long id);

    List<StoredQuery> findAllByPackageIdOrderById(long packageId);

    List<StoredQuery> findAllByPackageIdInOrderById(Collection<Long> packageIds);

    /** How many open questions a package has. */
    record Count(long packageId, long open) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredQueries$Count(q.packageId, count(*))"
            + " from StoredQuery q where q.packageId in :packageIds and q.settledAt is null group by q.packageId")
    List<Count> countOpen(Collection<Long> packageIds);

    /** A query beside the name of its package. */
    record Named(StoredQuery query, String packageName) {}

    @Query(
            value = "select new studio.stancebook.catalogue.internal.StoredQueries$Named(q, p.name)"
                    + " from StoredQuery q join StoredPackage p on p.id = q.packageId"
                    + " where q.openIn = :segmentId order by q.id desc",
            countQuery = "select count(*) from StoredQuery q where q.openIn = :segmentId")
    Page<Named> findOpen(long segmentId, Pageable page);
}
