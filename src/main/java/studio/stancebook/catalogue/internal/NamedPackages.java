package studio.stancebook.catalogue.internal;

import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.PackageView;

/** Packages by their names, many in one transaction: what was read is forgotten by it again. */
@Component
@Transactional
public class NamedPackages {

    private final PackageReading reading;
    private final PackageLookUp lookUp;
    private final StoredSegments segments;
    private final EntityManager entities;

    NamedPackages(PackageReading reading, PackageLookUp lookUp, StoredSegments segments, EntityManager entities) {
        this.reading = reading;
        this.lookUp = lookUp;
        this.segments = segments;
        this.entities = entities;
    }

    /** The packages that have one of the names, each by its own. */
    public Map<PackageName, PackageView> of(Collection<PackageName> names) {
        Map<PackageName, PackageView> found = new HashMap<>();
        names.stream()
                .collect(Collectors.groupingBy(PackageName::segment))
                .forEach((key, ofSegment) -> segments.findBySegmentKey(key)
                        .ifPresent(segment -> Chunks.of(ofSegment).forEach(chunk -> read(segment, chunk, found))));
        return found;
    }

    private void read(StoredSegment segment, List<PackageName> names, Map<PackageName, PackageView> found) {
        List<Long> ids = lookUp.idsOf(segment, names);
        if (!ids.isEmpty()) {
            reading.getAll(ids).forEach(view -> found.put(view.packageName(), view));
            entities.flush();
            entities.clear();
        }
    }
}
