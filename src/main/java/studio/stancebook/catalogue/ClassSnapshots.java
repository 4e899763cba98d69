package studio.stancebook.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.catalogue.internal.ClassReader;
import studio.stancebook.catalogue.internal.ClassReader.Head;
import studio.stancebook.catalogue.internal.ClassReader.ReadClass;
import studio.stancebook.catalogue.internal.ClassRevisions;
import studio.stancebook.catalogue.internal.ClassUpdate;
import studio.stancebook.catalogue.internal.CurrentLayout;
import studio.stancebook.catalogue.internal.ValueLayout;

/**
 * The classes of all segments, kept in memory. Every call asks the database for the revision first, so what comes back is
 * never older than the last change that was committed before the call, whichever server made it; only what changed is read
 * again.
 */
@Component
public class ClassSnapshots {

    private final ClassReader reader;
    private final ClassRevisions revisions;
    private final CurrentLayout layouts;
    private final Map<Long, Held> classes = new ConcurrentHashMap<>();

    /** The newest known class of a segment; whoever brings it up to date holds its lock. */
    private static final class Held {

        private volatile @Nullable ClassSnapshot snapshot;
    }

    ClassSnapshots(ClassReader reader, ClassRevisions revisions, CurrentLayout layouts) {
        this.reader = reader;
        this.revisions = revisions;
        this.layouts = layouts;
    }

    /**
     * The class of a segment now. Inside a transaction that changed the class, with its changes.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    // In a transaction, so that whoever waits for a lock below has a connection already and none can run out.
    @Transactional(readOnly = true)
    public ClassSnapshot of(String segmentKey) {
        return of(reader.head(segmentKey).orElseThrow(() -> new UnknownSegment(segmentKey)));
    }

    /** The classes of all segments by key; one statement asks for the revisions of all of them. */
    @Transactional(readOnly = true)
    public Map<String, ClassSnapshot> all() {
        return reader.heads().stream().collect(Collectors.toMap(Head::segmentKey, this::of));
    }

    private ClassSnapshot of(Head head) {
        ValueLayout layout = layouts.get();
        Held held = classes.computeIfAbsent(head.id(), id -> new Held());
        synchronized (held) {
            ClassSnapshot known = held.snapshot;
            if (revisions.changedHere(head.id())) {
                return current(head, layout, known);
            }
            if (known == null || known.revision() < head.revision() || known.layout() != layout) {
                known = current(head, layout, known);
                held.snapshot = known;
            }
            return known;
        }
    }

    /**
     * The part of the class of a segment that a filter takes.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    @Transactional(readOnly = true)
    public ClassSnapshot of(String segmentKey, ClassFilter filter) {
        return of(segmentKey).filtered(filter);
    }

    /** The classes that are kept in memory now. */
    List<ClassSnapshot> kept() {
        return classes.values().stream()
                .map(held -> held.snapshot)
                .filter(Objects::nonNull)
                .toList();
    }

    private ClassSnapshot current(Head head, ValueLayout layout, @Nullable ClassSnapshot known) {
        if (known == null || known.layout() != layout) {
            ReadClass read = reader.all(head.id(), layout);
            return new ClassSnapshot(head.segmentKey(), read.revision(), layout, read.rows());
        }
        ClassUpdate update = new ClassUpdate();
        ReadClass read = reader.since(head.id(), new ReadClass(known.revision(), known.rows()), layout, update);
        return known.updated(read.revision(), read.rows(), update);
    }
}
