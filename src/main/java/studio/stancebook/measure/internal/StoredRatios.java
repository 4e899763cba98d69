package studio.stancebook.measure.internal;

import java.util.List;
import org.springframework.data.repository.Repository;

/** The studio's own ratios, oldest first. */
public interface StoredRatios extends Repository<StoredRatio, Long> {

    StoredRatio saveAndFlush(StoredRatio ratio);

    List<StoredRatio> findAllByOrderByIdAsc();

    long deleteByRatioKey(String ratioKey);
}
