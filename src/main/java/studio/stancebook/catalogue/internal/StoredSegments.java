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

    void delete(StoredSegment segment);

    @Query("select s.id from StoredSegment s where s.segmentKey in :keys order by s.id")
    List<Long> idsOf(Collection<String> keys);

    Optional<StoredSegment> findBySegmentKey(String key);

    List<StoredSegment> findAllByOrderByNameAscIdAsc();

    Page<StoredSegment> findAllByOrderByNameAscIdAsc(Pageable page);

    /** How many packages a segment has, those set aside included. */
    record Size(long id, String key, long packages) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredSegments$Size(s.id, s.segmentKey, s.packages)"
            + " from StoredSegment s")
    List<Size> sizes();
}
