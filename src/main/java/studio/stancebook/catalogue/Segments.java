package studio.stancebook.catalogue;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.internal.StoredSegment;
import studio.stancebook.catalogue.internal.StoredSegments;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Stale;

/** The segments of the studio; who may change them is the caller's to check. */
@Component
@Transactional
public class Segments {

    private final StoredSegments segments;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    Segments(StoredSegments segments, Clock clock, ApplicationEventPublisher events) {
        this.segments = segments;
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
        if (segments.findBySegmentKey(key).isPresent()) {
            throw taken(key);
        }
        try {
            SegmentView made = view(
                    segments.saveAndFlush(new StoredSegment(key, name.strip(), description.strip(), clock.instant())));
            tell("made", made, FieldValues.none(), facts(made));
            return made;
        } catch (DataIntegrityViolationException madeMeanwhile) {
            throw taken(key);
        }
    }

    /** The segment of a key, made with this name if there is none yet. */
    public SegmentView createIfMissing(String key, String name) {
        return segments.findBySegmentKey(key).map(Segments::view).orElseGet(() -> create(key, name, ""));
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
