package studio.stancebook.catalogue;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.internal.StoredSegment;
import studio.stancebook.catalogue.internal.StoredSegments;
import studio.stancebook.classes.ClassRevisions;
import studio.stancebook.classes.UnknownSegment;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Stale;

/** The segments of the studio; who may change them is the caller's to check. */
@Component
@Transactional
public class Segments {

    private final StoredSegments segments;
    private final ClassRevisions revisions;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    Segments(StoredSegments segments, ClassRevisions revisions, Clock clock, ApplicationEventPublisher events) {
        this.segments = segments;
        this.revisions = revisions;
        this.clock = clock;
        this.events = events;
    }

    /** All segments by name. */
    @Transactional(readOnly = true)
    public List<SegmentView> all() {
        return segments.findAllByOrderByNameAscIdAsc().stream()
                .map(Segments::view)
                .toList();
    }

    /** A page of segments by name, whatever order is asked for. */
    @Transactional(readOnly = true)
    public Page<SegmentView> page(Pageable page) {
        return segments.findAllByOrderByNameAscIdAsc(PageRequest.of(page.getPageNumber(), page.getPageSize()))
                .map(Segments::view);
    }

    /** What all segments are called, by name, without counting what is in them. */
    @Transactional(readOnly = true)
    public List<SegmentName> names() {
        return segments.findAllByOrderByNameAscIdAsc().stream()
                .map(segment -> new SegmentName(segment.id(), segment.key(), segment.name()))
                .toList();
    }

    /**
     * What a segment is called.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    @Transactional(readOnly = true)
    public SegmentName named(String key) {
        StoredSegment segment = find(key);
        return new SegmentName(segment.id(), segment.key(), segment.name());
    }

    /**
     * How often the class of a segment has changed.
     *
     * @throws UnknownSegment if there is no segment of this key
     */
    @Transactional(readOnly = true)
    public long revision(String key) {
        return find(key).revision();
    }

    /** @throws UnknownSegment if there is no segment of this key */
    @Transactional(readOnly = true)
    public SegmentView get(String key) {
        return view(find(key));
    }

    /** Whether there is a segment of this key. */
    @Transactional(readOnly = true)
    public boolean exists(String key) {
        return segments.findBySegmentKey(key).isPresent();
    }

    /**
     * Makes a segment.
     *
     * @param description may be empty
     * @throws studio.stancebook.problem.Impossible naming every field that cannot be accepted
     * @throws Conflict if there is a segment of this key
     */
    public SegmentView create(String key, String name, String description) {
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.key(key).ifPresent(errors::add);
        errors.addAll(wordErrors(name.strip(), description.strip()));
        CatalogueRules.refuse(errors);
        SegmentView made = make(key, name, description);
        tellMade(made);
        return made;
    }

    private SegmentView make(String key, String name, String description) {
        if (segments.findBySegmentKey(key).isPresent()) {
            throw taken(key);
        }
        try {
            return view(
                    segments.saveAndFlush(new StoredSegment(key, name.strip(), description.strip(), clock.instant())));
        } catch (DataIntegrityViolationException madeMeanwhile) {
            throw taken(key);
        }
    }

    /**
     * Keeps everybody else from writing to these segments until the transaction under way ends: all are locked at once, in
     * the order of their ids, so that two who do so cannot wait for each other.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lock(Set<String> keys) {
        if (!keys.isEmpty()) {
            segments.idsOf(keys).forEach(revisions::lock);
        }
    }

    /**
     * Makes segments, in the order of their keys, for a transaction that does not know yet which of them it needs: it has to
     * say so by {@link #keep}.
     *
     * @param names of the segments by their keys
     * @throws Conflict if there is a segment of such a key
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void prepare(Map<String, String> names) {
        new TreeMap<>(names).forEach((key, name) -> make(key, name, ""));
    }

    /** Keeps those of the prepared segments that are needed, and takes the others back. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void keep(Set<String> prepared, Set<String> needed) {
        for (String key : new TreeSet<>(prepared)) {
            if (needed.contains(key)) {
                tellMade(view(find(key)));
            } else {
                segments.delete(find(key));
            }
        }
    }

    /**
     * Changes name and description.
     *
     * @throws UnknownSegment if there is no segment of this key
     * @throws Stale if the segment was changed since
     * @throws studio.stancebook.problem.Impossible naming every field that cannot be accepted
     */
    public SegmentView change(String key, ExpectedVersion expected, String name, String description) {
        StoredSegment segment = find(key);
        expected.check(segment.version(), "segment");
        CatalogueRules.refuse(wordErrors(name.strip(), description.strip()));
        FieldValues before = facts(view(segment));
        segment.describe(name.strip(), description.strip());
        try {
            SegmentView changed = view(segments.saveAndFlush(segment));
            tell("changed", changed, before, facts(changed));
            return changed;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            throw new Stale("The segment was changed by somebody else at the same moment: read it again.");
        }
    }

    private void tellMade(SegmentView made) {
        tell("made", made, FieldValues.none(), facts(made));
    }

    private void tell(String action, SegmentView segment, FieldValues before, FieldValues after) {
        events.publishEvent(ActivityEvent.of(action, "segment", segment.key(), segment.name(), before, after));
    }

    private static FieldValues facts(SegmentView segment) {
        return FieldValues.of("name", segment.name()).and("description", segment.description());
    }

    private static List<FieldError> wordErrors(String name, String description) {
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.name("name", name).ifPresent(errors::add);
        CatalogueRules.description(description).ifPresent(errors::add);
        return errors;
    }

    private static Conflict taken(String key) {
        return new Conflict("There is a segment with the key " + key + " already.");
    }

    private StoredSegment find(String key) {
        return segments.findBySegmentKey(key).orElseThrow(() -> new UnknownSegment(key));
    }

    private static SegmentView view(StoredSegment segment) {
        return new SegmentView(
                segment.id(),
                segment.key(),
                segment.name(),
                segment.description(),
                segment.version(),
                segment.revision(),
                Math.toIntExact(segment.packages()));
    }
}
