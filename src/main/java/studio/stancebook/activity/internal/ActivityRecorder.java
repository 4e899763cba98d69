package studio.stancebook.activity.internal;

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
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.FieldChange;

/**
 * Writes a line for each activityEvent, in the transaction of the activityEvent: both are kept or neither.
 *
 * <p>All that write wait here for each other, so it comes last before the commit, when everything else is written and every
 * other lock is taken: whoever holds the head waits for nobody.
 */
@Component
class ActivityRecorder implements InitializingBean {

    /** Stands for a person where no request is under way. */
    static final String SERVER = "the server itself";

    /** Stands for whoever sent a request without being signed in, such as one to sign in. */
    static final String STRANGER = "nobody signed in";

    private final StoredLines lines;
    private final EntityManager entities;
    private final TransactionTemplate transaction;
    private final Clock clock;

    ActivityRecorder(StoredLines lines, EntityManager entities, PlatformTransactionManager transactions, Clock clock) {
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
    void record(ActivityEvent activityEvent) {
        transaction.executeWithoutResult(status -> {
            entities.flush();
            append(activityEvent);
        });
    }

    private static String nobody() {
        return RequestContextHolder.getRequestAttributes() == null ? SERVER : STRANGER;
    }

    private void append(ActivityEvent activityEvent) {
        List<FieldChange> changes = FieldDifferences.of(activityEvent);
        Optional<SignedIn> who = SignedIn.current();
        ChainHead head = lines.lockHead();
        ActivityLine unsealed = new ActivityLine(
                head.lineCount() + 1,
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                who.map(SignedIn::personId).orElse(null),
                RecordText.words(who.map(SignedIn::name).orElseGet(ActivityRecorder::nobody), 100),
                RecordText.words(activityEvent.action(), 40),
                RecordText.words(activityEvent.kind(), 40),
                RecordText.words(activityEvent.subject(), 200),
                RecordText.words(activityEvent.title(), 300),
                changes,
                head.hash(),
                "");
        lines.add(Chain.sealed(unsealed));
    }
}
