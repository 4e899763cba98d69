package studio.stancebook.account.internal;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.management.UserCredentialRepository;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Legible;
import studio.stancebook.problem.NotFound;

/** Keeps the passkeys of people: for themselves, and as the credential records of Web Authentication. */
@Component
@Transactional
public class PasskeyService implements UserCredentialRepository {

    /** Our choice: many more than anybody has devices. */
    static final int MOST = 20;

    private static final int MAX_LABEL = 100;

    private final Passkeys passkeys;
    private final People people;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    PasskeyService(Passkeys passkeys, People people, Clock clock, ApplicationEventPublisher events) {
        this.passkeys = passkeys;
        this.people = people;
        this.clock = clock;
        this.events = events;
    }

    @Transactional(readOnly = true)
    public List<PasskeyEntry> list(SignedIn owner) {
        return passkeys.ofPerson(owner.personId()).stream().map(Passkey::entry).toList();
    }

    /**
     * A label under which a person may add another passkey.
     *
     * @throws Impossible if the label is blank or too long, or the person has as many passkeys as there may be
     */
    @Transactional(readOnly = true)
    public String checkedLabel(SignedIn owner, @Nullable String typed) {
        String label = typed == null ? "" : typed.strip();
        Legible.faultOfLine("a label", label, MAX_LABEL).ifPresent(fault -> {
            throw Impossible.ofField("label", fault);
        });
        refuseIfMost(owner.personId());
        return label;
    }

    private void refuseIfMost(long personId) {
        if (passkeys.ofPerson(personId).size() >= MOST) {
            throw Impossible.ofField(
                    "label", "You have " + MOST + " passkeys, which is as many as there may be. Remove one first.");
        }
    }

    /** @throws NotFound if the owner has no such passkey, even if somebody else has */
    public void remove(SignedIn owner, long id) {
        Passkey passkey = passkeys.ofPerson(owner.personId()).stream()
                .filter(one -> one.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotFound("passkey", id));
        if (passkeys.remove(id, owner.personId()) == 1) {
            tell("removed", passkey, facts(passkey, owner.name()), FieldValues.none());
        }
    }

    /** Whose passkey has an id; null if nobody's. */
    @Transactional(readOnly = true)
    public @Nullable SignedIn ownerOf(Bytes credentialId) {
        return passkeys.findByCredentialId(credentialId.toBase64UrlString())
                .map(passkey -> passkey.person().signedIn())
                .orElse(null);
    }

    @Override
    @Transactional(readOnly = true)
    public @Nullable CredentialRecord findByCredentialId(Bytes credentialId) {
        return passkeys.findByCredentialId(credentialId.toBase64UrlString())
                .map(Passkey::record)
                .orElse(null);
    }

    @Override
    @Transactional(readOnly = true)
    public List<CredentialRecord> findByUserId(Bytes handle) {
        return passkeys.ofHandle(handle.toBase64UrlString()).stream()
                .map(Passkey::record)
                .toList();
    }

    /** Notes the use of a passkey that there is; any other is made, and belongs to whoever is signed in. */
    @Override
    public void save(CredentialRecord record) {
        passkeys.findByCredentialId(record.getCredentialId().toBase64UrlString())
                .ifPresentOrElse(known -> noteUse(known, record), () -> add(record));
    }

    /** A count that does not go up may be that of a copied authenticator (Web Authentication Level 3, 6.1.1). */
    private void noteUse(Passkey known, CredentialRecord record) {
        if (passkeys.noteUse(known.id(), record.getSignatureCount(), clock.instant()) == 0) {
            throw new IllegalArgumentException("The signature count of passkey " + known.id() + " did not go up.");
        }
    }

    private void add(CredentialRecord made) {
        long personId = SignedIn.current().orElseThrow().personId();
        Person owner = people.lock(personId).orElseThrow(() -> new NotFound("person", personId));
        refuseIfMost(personId);
        Passkey passkey = passkeys.saveAndFlush(new Passkey(owner, made, clock.instant()));
        tell("made", passkey, FieldValues.none(), facts(passkey, owner.displayName()));
    }

    @Override
    public void delete(Bytes credentialId) {
        throw new UnsupportedOperationException("Passkeys are removed by their owner.");
    }

    private static FieldValues facts(Passkey passkey, String owner) {
        return FieldValues.of("label", passkey.label()).and("owner", owner);
    }

    private void tell(String action, Passkey passkey, FieldValues before, FieldValues after) {
        events.publishEvent(ActivityEvent.of(action, "passkey", passkey.id(), passkey.label(), before, after));
    }
}
