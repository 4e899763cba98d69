package studio.stancebook.classes;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * What a transaction keeps to itself, by the id of a segment: begun with the first entry, gone when the transaction ends.
 * A transaction that comes between another one's begin and end has entries of its own.
 */
public final class TransactionScoped<T> {

    /** Notes something for the transaction under way, of which there must be one. */
    public void put(long segmentId, T value) {
        Map<Long, T> known = entries();
        (known != null ? known : begin()).put(segmentId, value);
    }

    /** What the transaction under way noted; null if it noted nothing, or if there is none. */
    public @Nullable T get(long segmentId) {
        Map<Long, T> known = entries();
        return known == null ? null : known.get(segmentId);
    }

    @SuppressWarnings("unchecked") // nobody else has this key
    private @Nullable Map<Long, T> entries() {
        return (Map<Long, T>) TransactionSynchronizationManager.getResource(this);
    }

    private Map<Long, T> begin() {
        Map<Long, T> entries = new HashMap<>();
        TransactionSynchronizationManager.bindResource(this, entries);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {

            @Override
            public void suspend() {
                TransactionSynchronizationManager.unbindResource(TransactionScoped.this);
            }

            @Override
            public void resume() {
                TransactionSynchronizationManager.bindResource(TransactionScoped.this, entries);
            }

            @Override
            public void afterCompletion(int status) {
                TransactionSynchronizationManager.unbindResourceIfPossible(TransactionScoped.this);
            }
        });
        return entries;
    }
}
