package studio.stancebook.account.internal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The tokens that have not been revoked. */
interface AccessTokens extends Repository<AccessToken, Long> {

    AccessToken save(AccessToken token);

    @Query("select t from AccessToken t join fetch t.person where t.tokenHash = :hash")
    Optional<AccessToken> findByHash(String hash);

    @Query("select t from AccessToken t where t.person.id = :personId order by t.id")
    List<AccessToken> ofPerson(long personId);

    @Query(
            value = "select t from AccessToken t where t.person.id = :personId order by t.id",
            countQuery = "select count(t) from AccessToken t where t.person.id = :personId")
    Page<AccessToken> ofPerson(long personId, Pageable page);

    @Modifying
    @Query("update AccessToken t set t.lastUsedAt = :now where t.id = :id")
    void noteUse(long id, Instant now);

    /** @return how many were deleted: 1, or 0 if the person has no such token */
    @Modifying
    @Query("delete from AccessToken t where t.id = :id and t.person.id = :personId")
    int revoke(long id, long personId);

    /** @return how many were deleted */
    @Modifying
    @Query("delete from AccessToken t where t.person.id = :personId")
    int revokeAll(long personId);
}
