package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.account.Directory;
import studio.stancebook.catalogue.PackageChange;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.catalogue.SetAsideView;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Recorded;

/** Packages as values, and which names are taken. */
@Component
@Transactional(readOnly = true)
public class PackageReading {

    private final StoredPackages packages;
    private final PackageLookUp lookUp;
    private final DataIssues queries;
    private final StoredSegments segments;
    private final SetAsideIndex aparts;
    private final Directory directory;

    PackageReading(
            StoredPackages packages,
            PackageLookUp lookUp,
            DataIssues queries,
            StoredSegments segments,
            SetAsideIndex aparts,
            Directory directory) {
        this.packages = packages;
        this.lookUp = lookUp;
        this.queries = queries;
        this.segments = segments;
        this.aparts = aparts;
        this.directory = directory;
    }

    public PackageView get(long id) {
        StoredPackage kept = packages.find(id).orElseThrow(() -> new UnknownPackage(id));
        return views(List.of(kept), queries.findAllByPackageIdOrderById(id)).get(0);
    }

    public List<PackageView> getAll(List<Long> ids) {
        return views(inOrder(ids), queries.findAllByPackageIdInOrderById(ids));
    }

    private List<PackageView> views(List<StoredPackage> kept, List<DataIssue> asked) {
        Map<Long, List<DataIssue>> byPackage = asked.stream().collect(Collectors.groupingBy(DataIssue::packageId));
        List<Opened> opened = kept.stream().map(Opened::of).toList();
        Map<Long, String> names = directory.names(opened.stream().flatMap(Opened::people));
        return opened.stream()
                .map(one -> one.view(byPackage.getOrDefault(one.kept().id(), List.of()), names))
                .toList();
    }

    /** The names of the packages of these ids. */
    public Map<Long, String> names(List<Long> ids) {
        Map<Long, String> names = new HashMap<>();
        Chunks.of(ids).forEach(chunk -> packages.titles(chunk).forEach(title -> names.put(title.id(), title.name())));
        return names;
    }

    public List<PackageChange> changedSince(Instant since, int most) {
        return packages.changedSince(since, Limit.of(most));
    }

    /** The dimensions of every {@code step}th package that counts in the class of a segment. */
    public List<DimensionSet> dimensionsIn(String segment, int step, int most) {
        return packages.inClass(segment, step, Limit.of(most)).stream()
                .map(StoredPackages.Recorded::set)
                .toList();
    }

    private List<StoredPackage> inOrder(List<Long> ids) {
        if (ids.isEmpty()) {
            return List.of();
        }
        Map<Long, StoredPackage> kept =
                packages.findAll(ids).stream().collect(Collectors.toMap(StoredPackage::id, Function.identity()));
        return ids.stream().map(kept::get).filter(Objects::nonNull).toList();
    }

    /** What does not count in the class of a segment. */
    public List<SetAsideView> setAside(String segment, Pageable page) {
        List<SetAsideView> all = new ArrayList<>();
        for (StoredPackage kept : inOrder(aparts.of(segment, page))) {
            ValueAside whole = kept.wholeAside();
            if (whole != null) {
                all.add(new SetAsideView(kept.id(), kept.name(), null, whole.reason(), whole.by()));
            }
            kept.valuesSetAside()
                    .forEach((key, apart) ->
                            all.add(new SetAsideView(kept.id(), kept.name(), key, apart.reason(), apart.by())));
        }
        return all;
    }

    /** Those of the names that are taken. */
    public Set<PackageName> taken(Collection<PackageName> names) {
        Set<PackageName> taken = new HashSet<>();
        names.stream()
                .collect(Collectors.groupingBy(PackageName::segment))
                .forEach((key, ofSegment) ->
                        segments.findBySegmentKey(key).ifPresent(segment -> taken.addAll(taken(segment, ofSegment))));
        return taken;
    }

    private List<PackageName> taken(StoredSegment segment, List<PackageName> names) {
        return Chunks.of(names).stream()
                .flatMap(chunk -> lookUp.taken(segment, chunk).stream())
                .toList();
    }

    /** A package whose texts have been read, once for all that is asked of them. */
    private record Opened(StoredPackage kept, DimensionSet dimensions, Map<String, ValueAside> valuesAside) {

        static Opened of(StoredPackage kept) {
            return new Opened(kept, kept.dimensions(), kept.valuesSetAside());
        }

        /** The ids of those who are named in the texts. */
        Stream<@Nullable Long> people() {
            return Stream.concat(
                    dimensions.recorded().values().stream().map(Recorded::personId),
                    valuesAside.values().stream().map(ValueAside::personId));
        }

        PackageView view(List<DataIssue> asked, Map<Long, String> names) {
            Map<String, SetAside> valuesSetAside = new LinkedHashMap<>();
            valuesAside.forEach((key, apart) -> valuesSetAside.put(key, apart.shown(names)));
            List<PackageIssue> questions = asked.stream().map(DataIssue::view).toList();
            return new PackageView(
                    kept.id(),
                    kept.version(),
                    kept.name(),
                    kept.segment().key(),
                    kept.segment().name(),
                    kept.modelYear(),
                    kept.origin(),
                    dimensions.withNames(names),
                    kept.setAside(),
                    valuesSetAside,
                    questions,
                    kept.createdAt(),
                    kept.createdBy(),
                    kept.changedAt(),
                    kept.changedBy());
        }
    }
}
