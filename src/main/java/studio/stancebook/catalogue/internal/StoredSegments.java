package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The segments. */
public interface StoredSegments extends Repository<StoredSegment, Long> {

    StoredSegment saveAndFlush(StoredSegment segment);

    Optional<StoredSegment> findBySegmentKey(String key);

    List<StoredSegment> findAllByOrderByNameAscIdAsc();

    Page<StoredSegment> findAllByOrderByNameAscIdAsc(Pageable page);

    /** How many packages a segment has. */
    record Count(long segmentId, long packages) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredSegments$Count(p.segment.id, count(*))"
            + " from StoredPackage p where p.segment.id in :segmentIds group by p.segment.id")
    List<Count> countPackages(Collection<Long> segmentIds);

    @Query("select count(*) from StoredPackage p where p.segment.id = :segmentId")
    long countPackages(long segmentId);
}
