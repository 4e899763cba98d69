package studio.stancebook.band.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The versions of all bands. */
public interface StoredBands extends Repository<StoredBand, Long> {

    StoredBand saveAndFlush(StoredBand band);

    /** The newest version of each measure's band. */
    @Query("select b from StoredBand b where b.segmentId = :segmentId and b.version = (select max(o.version)"
            + " from StoredBand o where o.segmentId = b.segmentId and o.measure = b.measure)")
    List<StoredBand> newest(long segmentId);

    /** The newest version of a measure's band in each segment. */
    @Query("select b from StoredBand b where b.measure = :measure and b.version ="
            + " (select max(c.version) from StoredBand c where c.segmentId = b.segmentId and c.measure = b.measure)")
    List<StoredBand> newestOf(String measure);

    /** Versions of the bands of some measures, the highest of which is no higher than this. */
    @Query("select b from StoredBand b where b.segmentId = :segmentId and b.measure in :measures"
            + " and b.version <= :highest")
    List<StoredBand> upTo(long segmentId, Collection<String> measures, int highest);

    Optional<StoredBand> findFirstBySegmentIdAndMeasureOrderByVersionDesc(long segmentId, String measure);

    /** All versions of a band, newest first. */
    List<StoredBand> findBySegmentIdAndMeasureOrderByVersionDesc(long segmentId, String measure);
}
