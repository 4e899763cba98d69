package studio.stancebook.catalogue.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.ClassRevisions;

/** A segment as it is kept; its revision is written by {@link ClassRevisions} alone. */
@Entity
@Table(name = "segment")
public class StoredSegment {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private long version;

    @Column(nullable = false, updatable = false)
    private String segmentKey = "";

    @Column(nullable = false)
    private String name = "";

    @Column(nullable = false)
    private String description = "";

    @Column(nullable = false, updatable = false)
    private long revision;

    @Column(nullable = false, updatable = false)
    private long packages;

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    protected StoredSegment() {}

    public StoredSegment(String key, String name, String description, Instant now) {
        this.segmentKey = key;
        this.name = name;
        this.description = description;
        this.createdAt = now;
    }

    public void describe(String newName, String newDescription) {
        name = newName;
        description = newDescription;
    }

    public long id() {
        return Objects.requireNonNull(id);
    }

    public long version() {
        return version;
    }

    public String key() {
        return segmentKey;
    }

    public String name() {
        return name;
    }

    public String description() {
        return description;
    }

    public long revision() {
        return revision;
    }

    /** How many packages it has, those set aside included. */
    public long packages() {
        return packages;
    }
}
