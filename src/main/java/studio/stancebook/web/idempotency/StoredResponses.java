package studio.stancebook.web.idempotency;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The answers that are kept for posts with a key. Each call stands alone: it takes effect whatever becomes of the post. */
@Component
class StoredResponses {

    static final Duration KEPT_FOR = Duration.ofHours(24);

    /** After so long, a post whose answer never came was cut off, and its key is free again. */
    static final Duration CUT_OFF_AFTER = Duration.ofMinutes(10);

    static final int LONGEST_BODY = 1_000_000;

    private final JdbcClient jdbc;
    private final Clock clock;

    StoredResponses(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Takes a key for a post that is about to be carried out; false if it is taken already. */
    boolean claim(long personId, String key, String requestHash) {
        forgetOld();
        try {
            jdbc.sql("INSERT INTO idempotent_answer (person_id, idempotency_key, request_hash, claimed_at)"
                            + " VALUES (:person, :key, :hash, :now)")
                    .param("person", personId)
                    .param("key", key)
                    .param("hash", requestHash)
                    .param("now", at(clock.instant()))
                    .update();
            return true;
        } catch (DuplicateKeyException taken) {
            return false;
        }
    }

    Optional<StoredResponse> find(long personId, String key) {
        return jdbc.sql("SELECT request_hash, status, content_type, location, etag, body FROM idempotent_answer"
                        + " WHERE person_id = :person AND idempotency_key = :key")
                .param("person", personId)
                .param("key", key)
                .query(StoredResponse.class)
                .optional();
    }

    void keep(long personId, String key, StoredResponse answer) {
        jdbc.sql("UPDATE idempotent_answer SET status = :status, content_type = :type, location = :location,"
                        + " etag = :etag, body = :body WHERE person_id = :person AND idempotency_key = :key")
                .param("status", answer.status())
                .param("type", answer.contentType())
                .param("location", answer.location())
                .param("etag", answer.etag())
                .param("body", answer.body())
                .param("person", personId)
                .param("key", key)
                .update();
    }

    /** Gives a key back, because the post with it changed nothing. */
    void release(long personId, String key) {
        jdbc.sql("DELETE FROM idempotent_answer WHERE person_id = :person AND idempotency_key = :key")
                .param("person", personId)
                .param("key", key)
                .update();
    }

    private void forgetOld() {
        Instant now = clock.instant();
        jdbc.sql("DELETE FROM idempotent_answer WHERE claimed_at < :old OR (status IS NULL AND claimed_at < :cutOff)")
                .param("old", at(now.minus(KEPT_FOR)))
                .param("cutOff", at(now.minus(CUT_OFF_AFTER)))
                .update();
    }

    private static OffsetDateTime at(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }
}
