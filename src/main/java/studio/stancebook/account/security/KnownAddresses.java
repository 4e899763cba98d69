package studio.stancebook.account.security;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Remembers from which networks a person has signed in lately, as hashes of both. */
@Component
class KnownAddresses {

    static final Duration KNOWN_FOR = Duration.ofDays(30);

    private final JdbcClient database;
    private final Clock clock;

    KnownAddresses(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Whether that person has signed in from that network and it was not forgotten. */
    boolean knows(String hash) {
        return database.sql("SELECT COUNT(*) FROM known_address WHERE hash = :hash AND last_used_at > :oldest")
                        .param("hash", hash)
                        .param("oldest", at(oldest()))
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** Notes that somebody has just signed in, and forgets those that have not for long. */
    void remember(String hash) {
        database.sql("DELETE FROM known_address WHERE last_used_at <= :oldest")
                .param("oldest", at(oldest()))
                .update();
        int known = database.sql("UPDATE known_address SET last_used_at = :now WHERE hash = :hash")
                .param("now", at(clock.instant()))
                .param("hash", hash)
                .update();
        if (known == 0) {
            add(hash);
        }
    }

    private void add(String hash) {
        try {
            database.sql("INSERT INTO known_address (hash, last_used_at) VALUES (:hash, :now)")
                    .param("hash", hash)
                    .param("now", at(clock.instant()))
                    .update();
        } catch (DuplicateKeyException signedInTwiceAtOnce) {
            // It is there now.
        }
    }

    private Instant oldest() {
        return clock.instant().minus(KNOWN_FOR);
    }

    private static Timestamp at(Instant instant) {
        return Timestamp.from(instant);
    }
}
