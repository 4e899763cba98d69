package studio.stancebook.account.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/** Somebody who can sign in. Nobody is ever deleted, because what they did stays. */
@Entity
class Person {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private long version;

    @Column(nullable = false, updatable = false)
    private String email = "";

    @Column(nullable = false)
    private String displayName = "";

    @Enumerated(EnumType.STRING)
    @Column(nullable = false)
    private Role role = Role.VIEWER;

    @Column(nullable = false)
    private String passwordHash = "";

    @Column(nullable = false)
    private Instant passwordChangedAt = Instant.EPOCH;

    @Column(nullable = false)
    private boolean passwordChangeDue;

    @Column(nullable = false)
    private boolean active = true;

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    protected Person() {}

    /** @param passwordChangeDue whether somebody else set the password */
    Person(String email, String displayName, Role role, String passwordHash, boolean passwordChangeDue, Instant now) {
        this.email = canonical(email);
        this.displayName = displayName;
        this.role = role;
        this.passwordHash = passwordHash;
        this.passwordChangeDue = passwordChangeDue;
        this.passwordChangedAt = now;
        this.createdAt = now;
    }

    /** The form in which addresses are kept and compared. */
    static String canonical(String email) {
        return email.strip().toLowerCase(Locale.ROOT);
    }

    void become(String newName, Role newRole, boolean nowActive) {
        displayName = newName;
        role = newRole;
        active = nowActive;
    }

    /** @param changeDue whether somebody else set the password */
    void changePassword(String newHash, boolean changeDue, Instant now) {
        passwordHash = newHash;
        passwordChangeDue = changeDue;
        passwordChangedAt = now;
    }

    /** Keeps the same password under another hash. */
    void rehash(String newHash) {
        passwordHash = newHash;
    }

    boolean isActiveLead() {
        return active && role == Role.LEAD;
    }

    long id() {
        return Objects.requireNonNull(id);
    }

    long version() {
        return version;
    }

    String email() {
        return email;
    }

    String displayName() {
        return displayName;
    }

    Role role() {
        return role;
    }

    String passwordHash() {
        return passwordHash;
    }

    Instant passwordChangedAt() {
        return passwordChangedAt;
    }

    boolean passwordChangeDue() {
        return passwordChangeDue;
    }

    boolean active() {
        return active;
    }

    SignedIn signedIn() {
        return new SignedIn(id(), displayName, email, role);
    }

    PersonEntry entry() {
        return new PersonEntry(id(), email, displayName, role, active, passwordChangeDue, version, createdAt);
    }
}
