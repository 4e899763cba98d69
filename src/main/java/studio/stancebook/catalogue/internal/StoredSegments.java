package studio.stancebook.catalogue.internal;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The segments. */
public interface StoredSegments extends Repository<StoredSegment, Long> {

    StoredSegment saveAndFlush(StoredSegment segment);

    Optional<StoredSegment> findBySegmentKey(String key);

    List<StoredSegment> findAllByOrderByNameAscIdAsc();

    /** How many packages a segment has. */
    record Count(long segmentId, long packages) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredSegments$Count(p.segment.id, count(*))"
            + " from StoredPackage p group by p.segment.id")
    List<Count> countPackages();

    @Query("select count(*) from StoredPackage p where p.segment.id = :segmentId")
    long countPackages(long segmentId);
}
