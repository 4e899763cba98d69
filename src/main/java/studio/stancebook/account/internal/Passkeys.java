package studio.stancebook.account.internal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The passkeys that have not been removed. */
interface Passkeys extends Repository<Passkey, Long> {

    Passkey saveAndFlush(Passkey passkey);

    @Query("select p from Passkey p join fetch p.person where p.credentialId = :credentialId")
    Optional<Passkey> findByCredentialId(String credentialId);

    @Query("select p from Passkey p join fetch p.person where p.userHandle = :userHandle order by p.id")
    List<Passkey> ofHandle(String userHandle);

    @Query("select p from Passkey p where p.person.id = :personId order by p.id")
    List<Passkey> ofPerson(long personId);

    /**
     * Notes a use, unless the authenticator counts and its count did not go up.
     *
     * @return 1, or 0 if nothing was noted
     */
    @Modifying
    @Query("update Passkey p set p.signatureCount = :count, p.lastUsedAt = :now where p.id = :id"
            + " and (p.signatureCount < :count or (p.signatureCount = 0 and :count = 0))")
    int noteUse(long id, long count, Instant now);

    /** @return how many were deleted: 1, or 0 if the person has no such passkey */
    @Modifying
    @Query("delete from Passkey p where p.id = :id and p.person.id = :personId")
    int remove(long id, long personId);

    /** @return how many were deleted */
    @Modifying
    @Query("delete from Passkey p where p.person.id = :personId")
    int removeAll(long personId);
}
