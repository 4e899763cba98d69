package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

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

    /** What one row says about names that are taken. */
    record Taken(long id, long segmentId, String name, Integer modelYear) {}

    @Query(
            "select new studio.stancebook.catalogue.internal.StoredPackages$Taken(p.id, p.segment.id, p.name, p.modelYear)"
                    + " from StoredPackage p where p.segment.id = :segmentId and p.name in :names")
    List<Taken> named(long segmentId, Collection<String> names);

    /** The digest of a package's dimensions. */
    record Digest(long id, String digest) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredPackages$Digest(p.id, p.dimensionDigest)"
            + " from StoredPackage p where p.id in :ids")
    List<Digest> digests(Collection<Long> ids);

    /** A package by its dimensions. */
    record Alike(String digest, long id, String name, Integer modelYear, String segmentName) {}

    @Query("select new studio.stancebook.catalogue.internal.StoredPackages$Alike("
            + "p.dimensionDigest, p.id, p.name, p.modelYear, p.segment.name)"
            + " from StoredPackage p where p.dimensionDigest in :digests order by p.id")
    List<Alike> alike(Collection<String> digests);
}
