package studio.stancebook.classes;

import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.classes.ClassReader.Head;

/**
 * Counts the changes of each class. Whoever changes a class begins here: the new revision is written first, and the lock
 * on its row lets one writer at a time change a class, until the transaction ends.
 */
@Component
public class ClassRevisions {

    private final JdbcClient database;
    private final ApplicationEventPublisher events;

    /** The revisions that the transaction under way has begun. */
    private final TransactionScoped<Long> begun = new TransactionScoped<>();

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
        Head head = database.sql("SELECT id, segment_key, revision FROM segment WHERE id = ?")
                .param(segmentId)
                .query(Head.class)
                .single();
        begun.put(segmentId, head.revision());
        events.publishEvent(new ClassChanged(head.segmentKey(), head.revision()));
        return head.revision();
    }

    /** Keeps other writers from the class of a segment until the transaction ends, without a change of it. */
    public void lock(long segmentId) {
        database.sql("UPDATE segment SET revision = revision WHERE id = ?")
                .param(segmentId)
                .update();
    }

    /** The revision that the transaction under way leads to: the one that it has begun, or else {@link #next}. */
    public long here(long segmentId) {
        Long known = begunHere(segmentId);
        return known == null ? next(segmentId) : known;
    }

    /** Notes that a segment whose change has begun has so many packages more, or fewer. */
    public void count(long segmentId, int more) {
        database.sql("UPDATE segment SET packages = packages + ? WHERE id = ?")
                .params(more, segmentId)
                .update();
    }

    /** Notes that packages that are still there left their class with a revision. */
    public void departAll(Collection<Long> packageIds, long revision) {
        database.sql("INSERT INTO class_departure (segment_id, package_id, revision)"
                        + " SELECT segment_id, id, :revision FROM benchmark_package WHERE id IN (:ids)")
                .param("revision", revision)
                .param("ids", packageIds)
                .update();
    }

    /** Notes that a package left a class with a revision. */
    public void depart(long segmentId, long packageId, long revision) {
        database.sql("INSERT INTO class_departure (segment_id, package_id, revision) VALUES (?, ?, ?)")
                .params(segmentId, packageId, revision)
                .update();
    }

    /** The revision that the transaction under way leads to; null if it has not changed the class. */
    public @Nullable Long begunHere(long segmentId) {
        return begun.get(segmentId);
    }
}
