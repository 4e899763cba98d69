package studio.stancebook.catalogue.internal;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import studio.stancebook.catalogue.ClassChanged;

/**
 * Counts the changes of each class. Whoever changes a class begins here: the new revision is written first, and the lock
 * on its row lets one writer at a time change a class, until the transaction ends.
 */
@Component
public class ClassRevisions {

    private final JdbcClient database;
    private final ApplicationEventPublisher events;

    ClassRevisions(JdbcClient database, ApplicationEventPublisher events) {
        this.database = database;
        this.events = events;
    }

    /** Begins a change of the class of a segment and gives the revision that it leads to. Needs a transaction. */
    public long next(long segmentId) {
        int found = database.sql("UPDATE segment SET revision = revision + 1 WHERE id = ?")
                .param(segmentId)
                .update();
        if (found != 1) {
            throw new IllegalStateException("There is no segment with the id " + segmentId);
        }
        ClassBegun begun = database.sql("SELECT segment_key, revision FROM segment WHERE id = ?")
                .param(segmentId)
                .query(ClassBegun.class)
                .single();
        touched().put(segmentId, begun.revision());
        events.publishEvent(new ClassChanged(begun.segmentKey(), begun.revision()));
        return begun.revision();
    }

    /** The revision that the transaction under way leads to: the one that it has begun, or else {@link #next}. */
    long here(long segmentId) {
        Long begun = touched().get(segmentId);
        return begun == null ? next(segmentId) : begun;
    }

    private record ClassBegun(String segmentKey, long revision) {}

    /** Notes that a segment whose change has begun has so many packages more, or fewer. */
    void count(long segmentId, int more) {
        database.sql("UPDATE segment SET packages = packages + ? WHERE id = ?")
                .params(more, segmentId)
                .update();
    }

    /** Notes that a package left a class with a revision. */
    public void depart(long segmentId, long packageId, long revision) {
        database.sql("INSERT INTO class_departure (segment_id, package_id, revision) VALUES (?, ?, ?)")
                .params(segmentId, packageId, revision)
                .update();
    }

    /** True if the transaction under way has changed the class, so that nobody else may see what it sees. */
    public boolean changedHere(long segmentId) {
        return TransactionSynchronizationManager.getResource(this) instanceof Map<?, ?> touched
                && touched.containsKey(segmentId);
    }

    @SuppressWarnings("unchecked")
    private Map<Long, Long> touched() {
        @Nullable Object known = TransactionSynchronizationManager.getResource(this);
        return known != null ? (Map<Long, Long>) known : begin();
    }

    private Map<Long, Long> begin() {
        Map<Long, Long> touched = new HashMap<>();
        TransactionSynchronizationManager.bindResource(this, touched);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {

            @Override
            public void suspend() {
                TransactionSynchronizationManager.unbindResource(ClassRevisions.this);
            }

            @Override
            public void resume() {
                TransactionSynchronizationManager.bindResource(ClassRevisions.this, touched);
            }

            @Override
            public void afterCompletion(int status) {
                TransactionSynchronizationManager.unbindResourceIfPossible(ClassRevisions.this);
            }
        });
        return touched;
    }
}
