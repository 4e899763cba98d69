package studio.stancebook.account.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A token of a person: everything but the secret, of which only the hash is kept. */
@Entity
class AccessToken {

    private static final Duration USE_IS_NOTED_EVERY = Duration.ofMinutes(1);

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "person_id", nullable = false, updatable = false)
    private @Nullable Person person;

    @Column(nullable = false, updatable = false)
    private String name = "";

    @Column(nullable = false, updatable = false)
    private String tokenHash = "";

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    private @Nullable Instant lastUsedAt;

    protected AccessToken() {}

    AccessToken(Person person, String name, String tokenHash, Instant now) {
        this.person = person;
        this.name = name;
        this.tokenHash = tokenHash;
        this.createdAt = now;
    }

    boolean useIsWorthNoting(Instant now) {
        return lastUsedAt == null || !now.isBefore(lastUsedAt.plus(USE_IS_NOTED_EVERY));
    }

    long id() {
        return Objects.requireNonNull(id);
    }

    Person person() {
        return Objects.requireNonNull(person);
    }

    TokenEntry entry() {
        return new TokenEntry(id(), name, createdAt, lastUsedAt);
    }
}
