package studio.stancebook.catalogue.internal;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.repository.Repository;

/** The segments. */
public interface StoredSegments extends Repository<StoredSegment, Long> {

    StoredSegment saveAndFlush(StoredSegment segment);

    Optional<StoredSegment> findBySegmentKey(String key);

    List<StoredSegment> findAllByOrderByNameAscIdAsc();

    Page<StoredSegment> findAllByOrderByNameAscIdAsc(Pageable page);
}
