package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import studio.stancebook.catalogue.PackageChange;
import studio.stancebook.classes.layout.DimensionText;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;

/** The benchmark packages. */
interface StoredPackages extends Repository<StoredPackage, Long> {

    StoredPackage save(StoredPackage kept);

    void delete(StoredPackage kept);

    void flush();

    @Query("select p from StoredPackage p join fetch p.segment where p.id = :id")
    Optional<StoredPackage> find(long id);

    @Query("select p from StoredPackage p join fetch p.segment where p.id in :ids")
    List<StoredPackage> findAll(Collection<Long> ids);

    @Query("select p.segment.id from StoredPackage p where p.id = :id")
    Optional<Long> segmentOf(long id);

    /** What was changed after a time, the last first, by the index of its own. */
    @Query("select new studio.stancebook.catalogue.PackageChange(p.id, p.name, p.segment.name, p.changedAt,"
            + " p.changedByNow) from StoredPackage p where p.changedAt > :since order by p.changedAt desc, p.id desc")
    List<PackageChange> changedSince(Instant since, Limit most);

    /** The dimensions of a package, apart from the package. */
    record Recorded(long id, String dimensions, String recorded, Origin origin) {

        DimensionSet set() {
            return DimensionText.read(dimensions, recorded, origin);
        }
    }

    @Query("select new studio.stancebook.catalogue.internal.StoredPackages$Recorded("
            + "p.id, p.dimensions, p.recorded, p.origin) from StoredPackage p where p.id in :ids")
    List<Recorded> recorded(Collection<Long> ids);

    /** The dimensions of every {@code step}th package that counts in the class of a segment. */
    @Query(
            "select new studio.stancebook.catalogue.internal.StoredPackages$Recorded("
                    + "p.id, p.dimensions, p.recorded, p.origin) from StoredPackage p"
                    + " where p.segment.segmentKey = :segment and p.setAsideReason is null and mod(p.id, :step) = 0 order by p.id")
    List<Recorded> inClass(String segment, int step, Limit most);

    /** What a package is called. */
    record Title(long id, String name, @Nullable Integer modelYear) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredPackages$Title(p.id, p.name, p.modelYear)"
            + " from StoredPackage p where p.id in :ids")
    List<Title> titles(Collection<Long> ids);

    @Query("select p from StoredPackage p where p.measureLayout <> :layout and p.id > :after order by p.id limit :most")
    List<StoredPackage> measuredOtherwise(String layout, long after, int most);

    @Modifying
    @Query("update StoredPackage p set p.measures = :measures, p.scalars = :scalars,"
            + " p.classMeasures = :classMeasures, p.measureLayout = :layout where p.id = :id and p.version = :version")
    int remeasure(
            long id,
            long version,
            Double[] measures,
            Double[] scalars,
            Double @Nullable [] classMeasures,
            String layout);

    /** Some packages of all, found along the index of names. */
    @Query("select p from StoredPackage p join fetch p.segment where p.id in (select q.id from StoredPackage q"
            + " order by q.name, q.id offset :from rows fetch first :most rows only) order by p.name, p.id")
    List<StoredPackage> byName(int from, int most);

    /** Some packages of a segment, found along the index of its names. */
    @Query("select p from StoredPackage p join fetch p.segment where p.id in (select q.id from StoredPackage q"
            + " where q.segment.id = :segment"
            + " order by q.name, q.id offset :from rows fetch first :most rows only) order by p.name, p.id")
    List<StoredPackage> ofSegmentByName(long segment, int from, int most);
}
