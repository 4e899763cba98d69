package studio.stancebook.account.internal;

import org.jspecify.annotations.Nullable;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.management.PublicKeyCredentialUserEntityRepository;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The people of the studio as user accounts of Web Authentication, named by their e-mail address. */
@Component
@Transactional(readOnly = true)
public class PasskeyOwners implements PublicKeyCredentialUserEntityRepository {

    private final People people;
    private final Passkeys passkeys;

    PasskeyOwners(People people, Passkeys passkeys) {
        this.people = people;
        this.passkeys = passkeys;
    }

    @Override
    public @Nullable PublicKeyCredentialUserEntity findById(Bytes handle) {
        return passkeys.ofHandle(handle.toBase64UrlString()).stream()
                .findFirst()
                .map(passkey -> entity(passkey.person(), handle))
                .orElse(null);
    }

    /** Under a handle drawn for the occasion if the person has no passkey yet. */
    @Override
    public @Nullable PublicKeyCredentialUserEntity findByUsername(String email) {
        return people.findByEmail(email)
                .map(person -> entity(person, handle(person)))
                .orElse(null);
    }

    private Bytes handle(Person person) {
        return passkeys.ofPerson(person.id()).stream()
                .findFirst()
                .map(Passkey::userHandle)
                .orElseGet(Bytes::random);
    }

    private static PublicKeyCredentialUserEntity entity(Person person, Bytes handle) {
        return ImmutablePublicKeyCredentialUserEntity.builder()
                .id(handle)
                .name(person.email())
                .displayName(person.displayName())
                .build();
    }

    @Override
    public void save(PublicKeyCredentialUserEntity entity) {
        throw new UnsupportedOperationException("People are added by leads.");
    }

    @Override
    public void delete(Bytes handle) {
        throw new UnsupportedOperationException("Nobody is ever deleted.");
    }
}
