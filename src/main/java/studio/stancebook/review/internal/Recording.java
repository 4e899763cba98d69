package studio.stancebook.review.internal;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.context.request.RequestContextHolder;
import studio.stancebook.account.Deed;
import studio.stancebook.account.SignedIn;
import studio.stancebook.review.ActivityLine;
import studio.stancebook.review.Change;

/**
 * Writes a line for each deed, in the transaction of the deed: both are kept or neither.
 *
 * <p>All that write wait here for each other, so it comes last before the commit, when everything else is written and every
 * other lock is taken: whoever holds the head waits for nobody.
 */
@Component
class Recording implements InitializingBean {

    /** Stands for a person where no request is under way. */
    static final String SERVER = "the server itself";

    /** Stands for whoever sent a request without being signed in, such as one to sign in. */
    static final String STRANGER = "nobody signed in";

    private final StoredLines lines;
    private final EntityManager entities;
    private final TransactionTemplate transaction;
    private final Clock clock;

    Recording(StoredLines lines, EntityManager entities, PlatformTransactionManager transactions, Clock clock) {
        this.lines = lines;
        this.entities = entities;
        this.transaction = new TransactionTemplate(transactions);
        this.clock = clock;
    }

    /** Begins the record of a new studio. Not by a script, because a backup brings its own head into empty tables. */
    @Override
    public void afterPropertiesSet() {
        if (lines.findHead().isEmpty()) {
            try {
                lines.begin();
            } catch (DuplicateKeyException begunByAnotherServer) {
                lines.head();
            }
        }
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT, fallbackExecution = true)
    @Order(Ordered.LOWEST_PRECEDENCE)
    void record(Deed deed) {
        transaction.executeWithoutResult(status -> {
            entities.flush();
            append(deed);
        });
    }

    private static String nobody() {
        return RequestContextHolder.getRequestAttributes() == null ? SERVER : STRANGER;
    }

    private void append(Deed deed) {
        List<Change> changes = Differences.of(deed);
        Optional<SignedIn> who = SignedIn.current();
        Head head = lines.lockHead();
        ActivityLine unsealed = new ActivityLine(
                head.lineCount() + 1,
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                who.map(SignedIn::personId).orElse(null),
                Written.words(who.map(SignedIn::name).orElseGet(Recording::nobody), 100),
                Written.words(deed.action(), 40),
                Written.words(deed.kind(), 40),
                Written.words(deed.subject(), 200),
                Written.words(deed.title(), 300),
                changes,
                head.hash(),
                "");
        lines.add(Chain.sealed(unsealed));
    }
}
