package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The questions about packages. */
interface DataIssues extends Repository<DataIssue, Long> {

    DataIssue save(DataIssue query);

    void delete(DataIssue query);

    Optional<DataIssue> findById(long id);

    List<DataIssue> findAllByPackageIdOrderById(long packageId);

    List<DataIssue> findAllByPackageIdInOrderById(Collection<Long> packageIds);

    /** How many open questions a package has. */
    record Count(long packageId, long open) {}

    @Query("select new studio.stancebook.catalogue.internal.DataIssues$Count(q.packageId, count(*))"
            + " from DataIssue q where q.packageId in :packageIds and q.settledAt is null group by q.packageId")
    List<Count> countOpen(Collection<Long> packageIds);

    /** A query beside the name of its package. */
    record Named(DataIssue query, String packageName) {}

    @Query(
            value = "select new studio.stancebook.catalogue.internal.DataIssues$Named(q, p.name)"
                    + " from DataIssue q join StoredPackage p on p.id = q.packageId"
                    + " where q.openIn = :segmentId order by q.id desc",
            countQuery = "select count(*) from DataIssue q where q.openIn = :segmentId")
    Page<Named> findOpen(long segmentId, Pageable page);
}
