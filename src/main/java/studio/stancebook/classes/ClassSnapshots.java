package studio.stancebook.classes;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.classes.ClassReader.Head;
import studio.stancebook.classes.ClassReader.ReadClass;
import studio.stancebook.classes.layout.ClassLayout;
import studio.stancebook.classes.layout.CurrentLayout;

/**
 * The classes of all segments, kept in memory. Every call asks the database for the revision first, so what comes back is
 * never older than the last change that was committed before the call, whichever server made it; only what changed is read
 * again, once for all who wait for it.
 *
 * <p>Whoever waits for a class outside a transaction holds no connection meanwhile: decision 0053.
 */
@Component
public class ClassSnapshots {

    private final ClassReader reader;
    private final ClassRevisions revisions;
    private final Supplier<? extends ClassLayout> layouts;
    private final TransactionTemplate reading;
    private final Map<Long, CachedClass> classes = new ConcurrentHashMap<>();

    /** The classes that the transaction under way adds packages to. */
    private final TransactionScoped<ClassGrowth> growths = new TransactionScoped<>();

    /** The newest known class of a segment. */
    private static final class CachedClass {

        private volatile @Nullable Known newest;

        /** Taken before a connection, by those who have none yet. */
        private final ReentrantLock turn = new ReentrantLock();

        /** Taken after a connection, by whoever brings the class up to date. */
        private final ReentrantLock update = new ReentrantLock();

        /** Keeps a class unless a newer one is known. */
        private void keepIfNewer(Known known) {
            update.lock();
            try {
                Known before = newest;
                if (before == null || before.since() < known.since()) {
                    newest = known;
                }
            } finally {
                update.unlock();
            }
        }

        /** The class if it is known as it was seen or newer, else null. */
        private @Nullable ClassSnapshot upTo(Head seen, ClassLayout layout) {
            ClassSnapshot known = whole();
            return known != null && known.revision() >= seen.revision() && known.layout() == layout ? known : null;
        }

        /** The class that may be given away; null if there is none, or if it was left begun. */
        private @Nullable ClassSnapshot whole() {
            Known known = newest;
            return known != null && known.whole() ? known.snapshot() : null;
        }
    }

    /**
     * A class and the revision to read on from. That is its own; but one less for a class that a transaction left before it
     * was through: such a one is only read on from, never given to anybody.
     */
    private record Known(ClassSnapshot snapshot, long since) {

        static Known whole(ClassSnapshot snapshot) {
            return new Known(snapshot, snapshot.revision());
        }

        static Known begun(ClassSnapshot snapshot) {
            return new Known(snapshot, snapshot.revision() - 1);
        }

        boolean whole() {
            return since == snapshot.revision();
        }
    }

    @Autowired
    ClassSnapshots(
            ClassReader reader,
            ClassRevisions revisions,
            CurrentLayout layouts,
            PlatformTransactionManager transactions) {
        this(reader, revisions, layouts::get, transactions);
    }

    ClassSnapshots(
            ClassReader reader,
            ClassRevisions revisions,
            Supplier<? extends ClassLayout> layouts,
            PlatformTransactionManager transactions) {
        this.reader = reader;
        this.revisions = revisions;
        this.layouts = layouts;
        this.reading = new TransactionTemplate(transactions);
        this.reading.setReadOnly(true);
    }

    /**
     * The class of a segment now. Inside a transaction that changed the class, with its changes.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    public ClassSnapshot of(String segmentKey) {
        return of(head(segmentKey));
    }

    /** The class of a segment, not older than it was seen. */
    public ClassSnapshot of(long segmentId, String segmentKey, long seenRevision) {
        return of(new Head(segmentId, segmentKey, seenRevision));
    }

    /** The classes of all segments by key; one statement asks for the revisions of all of them. */
    public Map<String, ClassSnapshot> all() {
        return reader.heads().stream().collect(Collectors.toMap(Head::segmentKey, this::of));
    }

    /**
     * The part of the class of a segment that a filter takes.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    public ClassSnapshot of(String segmentKey, ClassFilter filter) {
        return of(segmentKey).part(filter);
    }

    /**
     * The class of a segment as it was at a revision, as far as it is kept: without packages that came later, with those that
     * were set aside since, measured by the list of measures of now.
     *
     * @param at when it was at that revision
     * @throws UnknownSegment if there is no segment of this key
     */
    public PastClass past(String segmentKey, long revision, Instant at) {
        Head head = head(segmentKey);
        ClassSnapshot now = of(head);
        return revision >= now.revision()
                ? new PastClass(now, 0)
                : now.past(
                        revision,
                        () -> reader.past(
                                head.id(), new ReadClass(now.revision(), now.rows()), revision, at, now.layout()));
    }

    /**
     * Says that the transaction under way is going to add packages to the class of a segment, before it changes anything;
     * then it has to tell of each of them by {@link #added}, and nobody needs to read them from the database.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    public void expectAdditions(String segmentKey) {
        Head head = head(segmentKey);
        if (revisions.begunHere(head.id()) == null) {
            ClassSnapshot before = of(head);
            growths.put(head.id(), new ClassGrowth(before));
            TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                @Override
                public void afterCommit() {
                    ClassSnapshot grown = grown(head.id(), before.layout());
                    if (grown != null) {
                        held(head).keepIfNewer(Known.whole(grown));
                    }
                }
            });
        }
    }

    /** Tells of packages that were added, whose values are those of the layout with this fingerprint. */
    public void added(long segmentId, String fingerprint, List<ClassRow> rows) {
        ClassGrowth growth = growths.get(segmentId);
        if (growth != null) {
            growth.add(fingerprint, rows);
        }
    }

    /** The class as the transaction under way left it, if it only added packages; else null. */
    private @Nullable ClassSnapshot grown(long segmentId, ClassLayout layout) {
        ClassGrowth growth = growths.get(segmentId);
        Long revision = revisions.begunHere(segmentId);
        return growth == null || revision == null ? null : growth.at(revision, layout);
    }

    private Head head(String segmentKey) {
        return reader.head(segmentKey).orElseThrow(() -> new UnknownSegment(segmentKey));
    }

    private CachedClass held(Head head) {
        return classes.computeIfAbsent(head.id(), id -> new CachedClass());
    }

    private ClassSnapshot of(Head head) {
        ClassLayout layout = layouts.get();
        CachedClass held = held(head);
        if (TransactionSynchronizationManager.isActualTransactionActive()) {
            return revisions.begunHere(head.id()) == null
                    ? upToDate(head, layout, held)
                    : changedHere(head, layout, held);
        }
        ClassSnapshot known = held.upTo(head, layout);
        return known != null ? known : inTurn(head, layout, held);
    }

    private ClassSnapshot inTurn(Head head, ClassLayout layout, CachedClass held) {
        held.turn.lock();
        try {
            ClassSnapshot known = held.upTo(head, layout);
            return known != null
                    ? known
                    : Objects.requireNonNull(reading.execute(status -> upToDate(head, layout, held)));
        } finally {
            held.turn.unlock();
        }
    }

    /**
     * The class with what the transaction under way did to it. What had to be read for it is kept when that is committed:
     * as if it were from the revision before, so that what the transaction does to it from now on is read once more.
     */
    private ClassSnapshot changedHere(Head head, ClassLayout layout, CachedClass held) {
        ClassSnapshot grown = grown(head.id(), layout);
        if (grown != null) {
            return grown;
        }
        ClassSnapshot here = current(head, layout, held.newest);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                held.keepIfNewer(Known.begun(here));
            }
        });
        return here;
    }

    /** Reads what is missing; needs a transaction, so that nobody who has the lock still has to wait for a connection. */
    private ClassSnapshot upToDate(Head head, ClassLayout layout, CachedClass held) {
        held.update.lock();
        try {
            ClassSnapshot known = held.upTo(head, layout);
            if (known == null) {
                known = current(head, layout, held.newest);
                held.newest = Known.whole(known);
            }
            return known;
        } finally {
            held.update.unlock();
        }
    }

    /** The classes that are kept in memory now. */
    List<ClassSnapshot> kept() {
        return classes.values().stream()
                .map(CachedClass::whole)
                .filter(Objects::nonNull)
                .toList();
    }

    private ClassSnapshot current(Head head, ClassLayout layout, @Nullable Known known) {
        if (known == null || known.snapshot().layout() != layout) {
            ReadClass read = reader.all(head.id(), layout);
            return new ClassSnapshot(head.segmentKey(), read.revision(), layout, read.rows());
        }
        ClassSnapshot before = known.snapshot();
        ClassUpdate update = new ClassUpdate();
        ReadClass read = reader.since(head.id(), new ReadClass(known.since(), before.rows()), layout, update);
        return before.updated(read.revision(), read.rows(), update);
    }
}
