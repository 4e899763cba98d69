package studio.stancebook.account.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
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

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, updatable = false)
    private TokenScope scope = TokenScope.READ;

    @Column(nullable = false, updatable = false)
    private Instant expiresAt = Instant.EPOCH;

    protected AccessToken() {}

    AccessToken(Person person, String name, TokenScope scope, String tokenHash, Instant now, Instant expiresAt) {
        this.person = person;
        this.name = name;
        this.scope = scope;
        this.tokenHash = tokenHash;
        this.createdAt = now;
        this.expiresAt = expiresAt;
    }

    boolean useIsWorthNoting(Instant now) {
        return lastUsedAt == null || !now.isBefore(lastUsedAt.plus(USE_IS_NOTED_EVERY));
    }

    /** A token is of use until the moment of its end, exclusive. */
    boolean expired(Instant now) {
        return !now.isBefore(expiresAt);
    }

    long id() {
        return Objects.requireNonNull(id);
    }

    Person person() {
        return Objects.requireNonNull(person);
    }

    RecognisedToken recognised(Instant now) {
        return new RecognisedToken(person().signedIn(), scope, expiresAt, expired(now));
    }

    TokenEntry entry() {
        return new TokenEntry(id(), name, scope, createdAt, lastUsedAt, expiresAt);
    }
}
