package studio.stancebook.account.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.webauthn.api.AuthenticatorTransport;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutableCredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCose;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialType;

/** A passkey of a person: the credential record of Web Authentication Level 3, section 4, which holds no secret. */
@Entity
class Passkey {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "person_id", nullable = false, updatable = false)
    private @Nullable Person person;

    @Column(nullable = false, updatable = false)
    private String label = "";

    @Column(nullable = false, updatable = false)
    private String credentialId = "";

    /** What stands for the person on the authenticator, the same in all passkeys of a person. */
    @Column(nullable = false, updatable = false)
    private String userHandle = "";

    @Column(nullable = false, updatable = false)
    private String publicKey = "";

    @Column(nullable = false, updatable = false)
    private String attestationObject = "";

    /** Separated by commas. */
    @Column(nullable = false, updatable = false)
    private String transports = "";

    @Column(nullable = false, updatable = false)
    private boolean uvInitialized;

    @Column(nullable = false, updatable = false)
    private boolean backupEligible;

    @Column(nullable = false, updatable = false)
    private boolean backupState;

    @Column(nullable = false)
    private long signatureCount;

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    private @Nullable Instant lastUsedAt;

    protected Passkey() {}

    Passkey(Person person, CredentialRecord made, Instant now) {
        this.person = person;
        this.label = made.getLabel();
        this.credentialId = made.getCredentialId().toBase64UrlString();
        this.userHandle = made.getUserEntityUserId().toBase64UrlString();
        this.publicKey = new Bytes(made.getPublicKey().getBytes()).toBase64UrlString();
        this.attestationObject =
                Objects.requireNonNull(made.getAttestationObject()).toBase64UrlString();
        this.transports = known(made.getTransports());
        this.uvInitialized = made.isUvInitialized();
        this.backupEligible = made.isBackupEligible();
        this.backupState = made.isBackupState();
        this.signatureCount = made.getSignatureCount();
        this.createdAt = now;
    }

    /** Those that the standard names; what else a browser tells is no help in finding the authenticator. */
    private static String known(Set<AuthenticatorTransport> told) {
        return Arrays.stream(AuthenticatorTransport.values())
                .filter(told::contains)
                .map(AuthenticatorTransport::getValue)
                .collect(Collectors.joining(","));
    }

    long id() {
        return Objects.requireNonNull(id);
    }

    Person person() {
        return Objects.requireNonNull(person);
    }

    String label() {
        return label;
    }

    Bytes userHandle() {
        return Bytes.fromBase64(userHandle);
    }

    PasskeyEntry entry() {
        return new PasskeyEntry(id(), label, createdAt, lastUsedAt);
    }

    CredentialRecord record() {
        return ImmutableCredentialRecord.builder()
                .credentialType(PublicKeyCredentialType.PUBLIC_KEY)
                .credentialId(Bytes.fromBase64(credentialId))
                .userEntityUserId(userHandle())
                .publicKey(ImmutablePublicKeyCose.fromBase64(publicKey))
                .attestationObject(Bytes.fromBase64(attestationObject))
                .transports(transports())
                .uvInitialized(uvInitialized)
                .backupEligible(backupEligible)
                .backupState(backupState)
                .signatureCount(signatureCount)
                .label(label)
                .created(createdAt)
                .lastUsed(lastUsedAt == null ? createdAt : lastUsedAt)
                .build();
    }

    private Set<AuthenticatorTransport> transports() {
        return Arrays.stream(transports.split(","))
                .filter(transport -> !transport.isEmpty())
                .map(AuthenticatorTransport::valueOf)
                .collect(Collectors.toSet());
    }
}
