package studio.stancebook.catalogue;

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
import studio.stancebook.catalogue.internal.ClassLayout;
import studio.stancebook.catalogue.internal.ClassReader;
import studio.stancebook.catalogue.internal.ClassReader.Head;
import studio.stancebook.catalogue.internal.ClassReader.ReadClass;
import studio.stancebook.catalogue.internal.ClassRevisions;
import studio.stancebook.catalogue.internal.ClassRow;
import studio.stancebook.catalogue.internal.ClassUpdate;
import studio.stancebook.catalogue.internal.CurrentLayout;
import studio.stancebook.catalogue.internal.TransactionScoped;

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
    private final Map<Long, Held> classes = new ConcurrentHashMap<>();

    /** The classes that the transaction under way adds packages to. */
    private final TransactionScoped<ClassGrowth> growths = new TransactionScoped<>();

    /** The newest known class of a segment. */
    private static final class Held {

        private volatile @Nullable ClassSnapshot snapshot;

        /** What a transaction left behind: never given to anybody, only read on from, because its revision is one too low. */
        private volatile @Nullable ClassSnapshot beginning;

        /** Taken before a connection, by those who have none yet. */
        private final ReentrantLock turn = new ReentrantLock();

        /** Taken after a connection, by whoever brings the class up to date. */
        private final ReentrantLock update = new ReentrantLock();

        /** Keeps a class for whoever reads on, unless a newer one is known. */
        private void leave(ClassSnapshot begun) {
            update.lock();
            try {
                ClassSnapshot known = beginning();
                if (known == null || known.revision() < begun.revision()) {
                    beginning = begun;
                }
            } finally {
                update.unlock();
            }
        }

        /** What to read on from, the newest that there is. */
        private @Nullable ClassSnapshot beginning() {
            ClassSnapshot left = beginning;
            return left != null ? left : snapshot;
        }

        /** Keeps a class for everybody; whoever calls has the lock. */
        private void keep(ClassSnapshot read) {
            snapshot = read;
            beginning = null;
        }

        /** Keeps a class for everybody, unless a newer one is known. */
        private void keepIfNewer(ClassSnapshot committed) {
            update.lock();
            try {
                ClassSnapshot known = snapshot;
                if (known == null || known.revision() < committed.revision()) {
                    keep(committed);
                }
            } finally {
                update.unlock();
            }
        }

        /** The class if it is known as it was seen or newer, else null. */
        private @Nullable ClassSnapshot upTo(Head seen, ClassLayout layout) {
            ClassSnapshot known = snapshot;
            return known != null && known.revision() >= seen.revision() && known.layout() == layout ? known : null;
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
    public ClassSnapshot of(SegmentView seen) {
        return of(new Head(seen.id(), seen.key(), seen.revision()));
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
                        held(head).keepIfNewer(grown);
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

    private Held held(Head head) {
        return classes.computeIfAbsent(head.id(), id -> new Held());
    }

    private ClassSnapshot of(Head head) {
        ClassLayout layout = layouts.get();
        Held held = held(head);
        if (TransactionSynchronizationManager.isActualTransactionActive()) {
            return revisions.begunHere(head.id()) == null
                    ? upToDate(head, layout, held)
                    : changedHere(head, layout, held);
        }
        ClassSnapshot known = held.upTo(head, layout);
        return known != null ? known : inTurn(head, layout, held);
    }

    private ClassSnapshot inTurn(Head head, ClassLayout layout, Held held) {
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
    private ClassSnapshot changedHere(Head head, ClassLayout layout, Held held) {
        ClassSnapshot grown = grown(head.id(), layout);
        if (grown != null) {
            return grown;
        }
        ClassSnapshot here = current(head, layout, held.beginning());
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                held.leave(here.oneBefore());
            }
        });
        return here;
    }

    /** Reads what is missing; needs a transaction, so that nobody who has the lock still has to wait for a connection. */
    private ClassSnapshot upToDate(Head head, ClassLayout layout, Held held) {
        held.update.lock();
        try {
            ClassSnapshot known = held.upTo(head, layout);
            if (known == null) {
                known = current(head, layout, held.beginning());
                held.keep(known);
            }
            return known;
        } finally {
            held.update.unlock();
        }
    }

    /** The classes that are kept in memory now. */
    List<ClassSnapshot> kept() {
        return classes.values().stream()
                .map(held -> held.snapshot)
                .filter(Objects::nonNull)
                .toList();
    }

    private ClassSnapshot current(Head head, ClassLayout layout, @Nullable ClassSnapshot known) {
        if (known == null || known.layout() != layout) {
            ReadClass read = reader.all(head.id(), layout);
            return new ClassSnapshot(head.segmentKey(), read.revision(), layout, read.rows());
        }
        ClassUpdate update = new ClassUpdate();
        ReadClass read = reader.since(head.id(), new ReadClass(known.revision(), known.rows()), layout, update);
        return known.updated(read.revision(), read.rows(), update);
    }
}
