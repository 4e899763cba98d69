package studio.stancebook.catalogue.internal;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Author;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.DuplicatePackage;
import studio.stancebook.catalogue.NewPackage;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.PackageUpdate;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.classes.ClassRevisions;
import studio.stancebook.classes.UnknownSegment;
import studio.stancebook.classes.layout.CurrentLayout;
import studio.stancebook.classes.layout.ValueLayout;
import studio.stancebook.problem.ExpectedVersion;

/** Adds, changes and deletes packages. Every change begins with the revision of the class, which one writer holds. */
@Component
@Transactional
public class PackageWriting {

    /** So many packages are written in one batch. */
    private static final int AT_ONCE = 500;

    private final StoredPackages packages;
    private final StoredSegments segments;
    private final PackageReading reading;
    private final ClassRevisions revisions;
    private final CurrentLayout layouts;
    private final Remeasure remeasure;
    private final DataIssueWords questions;
    private final SetAsideIndex aparts;
    private final NewRows rows;
    private final EntityManager entities;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    PackageWriting(
            StoredPackages packages,
            StoredSegments segments,
            PackageReading reading,
            ClassRevisions revisions,
            CurrentLayout layouts,
            Remeasure remeasure,
            DataIssueWords questions,
            SetAsideIndex aparts,
            NewRows rows,
            EntityManager entities,
            Clock clock,
            ApplicationEventPublisher events) {
        this.packages = packages;
        this.segments = segments;
        this.reading = reading;
        this.revisions = revisions;
        this.layouts = layouts;
        this.remeasure = remeasure;
        this.questions = questions;
        this.aparts = aparts;
        this.rows = rows;
        this.entities = entities;
        this.clock = clock;
        this.events = events;
    }

    public long add(PackageDraft draft, Author by) {
        Soundness.requireEnteredByHand(draft.dimensions());
        long id = writeAndAsk(List.of(draft), by).get(0);
        StoredPackage added = packages.find(id).orElseThrow();
        events.publishEvent(PackageEvents.of("added", added, FieldValues.none(), PackageEvents.facts(added)));
        return id;
    }

    /** Is no event by itself: it is part of what its caller does, who tells it in one. */
    public List<Long> addAll(List<PackageDraft> drafts, Author by) {
        drafts.forEach(draft -> Soundness.requireInRange(draft.dimensions()));
        return writeAndAsk(drafts, by);
    }

    public List<Long> addUnscreened(List<PackageDraft> drafts, Author by) {
        drafts.forEach(draft -> Soundness.requireInRange(draft.dimensions()));
        return write(drafts, by);
    }

    /** Asks what new packages of a segment give rise to, seen against their class and each other. */
    public Map<Long, List<RaisedIssue>> screen(String segment, List<NewPackage> written) {
        return questions.afterWriting(segment(segment), written, clock.instant());
    }

    private List<Long> writeAndAsk(List<PackageDraft> drafts, Author by) {
        List<Long> ids = write(drafts, by);
        Map<String, List<NewPackage>> bySegment = new TreeMap<>();
        for (int i = 0; i < ids.size(); i++) {
            PackageDraft draft = drafts.get(i);
            bySegment
                    .computeIfAbsent(draft.segment(), none -> new ArrayList<>())
                    .add(new NewPackage(ids.get(i), draft.digest()));
        }
        bySegment.forEach(this::screen);
        return ids;
    }

    private List<Long> write(List<PackageDraft> drafts, Author by) {
        Map<String, StoredSegment> known = segmentsOf(drafts);
        known.keySet().forEach(questions::expectAdditions);
        Map<String, Long> begun = begin(known);
        refuseDuplicates(drafts);
        ValueLayout layout = layoutToWrite();
        Instant now = clock.instant();
        List<Long> ids = new ArrayList<>(drafts.size());
        for (int from = 0; from < drafts.size(); from += AT_ONCE) {
            List<PackageDraft> part = drafts.subList(from, Math.min(drafts.size(), from + AT_ONCE));
            List<StoredPackage> added = new ArrayList<>(part.size());
            for (PackageDraft draft : part) {
                StoredPackage one = new StoredPackage(by, now);
                one.become(draft, known(known, draft.segment()), by, now);
                one.measure(layout, draft);
                one.enterRevision(known(begun, draft.segment()));
                added.add(one);
            }
            rows.insert(added);
            added.forEach(one -> ids.add(one.id()));
            questions.added(added);
            questions.ofDrafts(added, part, now);
        }
        count(drafts, known);
        return ids;
    }

    private ValueLayout layoutToWrite() {
        ValueLayout layout = layouts.get();
        remeasure.written(layout);
        return layout;
    }

    private void count(List<PackageDraft> drafts, Map<String, StoredSegment> known) {
        Map<String, Long> written =
                drafts.stream().collect(Collectors.groupingBy(PackageDraft::segment, Collectors.counting()));
        written.forEach((key, n) -> revisions.count(known(known, key).id(), Math.toIntExact(n)));
    }

    private Map<String, StoredSegment> segmentsOf(List<PackageDraft> drafts) {
        Map<String, StoredSegment> known = new HashMap<>();
        drafts.forEach(draft -> known.computeIfAbsent(draft.segment(), this::segment));
        return known;
    }

    private StoredSegment segment(String key) {
        return segments.findBySegmentKey(key).orElseThrow(() -> new UnknownSegment(key));
    }

    /** Begins the change of several classes, always in the same order, so that two writers cannot wait for each other. */
    private Map<String, Long> begin(Map<String, StoredSegment> known) {
        Map<Long, String> inOrder = new TreeMap<>();
        known.values().forEach(segment -> inOrder.put(segment.id(), segment.key()));
        Map<String, Long> begun = new HashMap<>();
        inOrder.forEach((id, key) -> begun.put(key, revisions.here(id)));
        return begun;
    }

    private static <T> T known(Map<String, T> map, String key) {
        T value = map.get(key);
        if (value == null) {
            throw new IllegalStateException("Nothing was prepared for the segment " + key);
        }
        return value;
    }

    private void refuseDuplicates(List<PackageDraft> drafts) {
        List<PackageName> names = drafts.stream().map(PackageDraft::packageName).toList();
        Set<PackageName> seen = new HashSet<>(reading.taken(names));
        names.stream().filter(name -> !seen.add(name)).findFirst().ifPresent(name -> {
            throw new DuplicatePackage(name);
        });
    }

    public void change(long id, ExpectedVersion expected, PackageDraft draft, Author by) {
        long fromId = segmentOf(id);
        StoredSegment to = segment(draft.segment());
        Map<Long, Long> begun = begin(fromId, to.id());
        StoredPackage kept = locked(id, expected);
        Soundness.requireStillSound(kept.dimensions(), draft.dimensions());
        if (!kept.packageName().equals(draft.packageName())) {
            refuseDuplicates(List.of(draft));
        }
        if (kept.counts() && fromId != to.id()) {
            revisions.depart(fromId, id, revision(begun, fromId));
        }
        boolean moves = fromId != to.id();
        FieldValues before = PackageEvents.facts(kept);
        Instant now = clock.instant();
        kept.become(draft, to, by, now);
        kept.measure(layoutToWrite(), draft);
        kept.enterRevision(revision(begun, to.id()));
        entities.flush();
        if (moves) {
            revisions.count(fromId, -1);
            revisions.count(to.id(), 1);
            aparts.note(kept);
        }
        questions.afterChange(kept, draft, now);
        events.publishEvent(PackageEvents.of("changed", kept, before, PackageEvents.facts(kept)));
    }

    /**
     * Changes packages within their segments, some of many at a time; values that do not close become queries. What has to
     * be seen against the whole class is asked by {@link #screenChanged} once all are changed.
     */
    public void changeAll(List<PackageUpdate> updates, Author by) {
        updates.forEach(update -> Soundness.requireInRange(update.draft().dimensions()));
        Map<String, StoredSegment> known =
                segmentsOf(updates.stream().map(PackageUpdate::draft).toList());
        Map<Long, Long> begun = new TreeMap<>();
        known.values().forEach(segment -> begun.put(segment.id(), 0L));
        begun.replaceAll((id, none) -> revisions.next(id));
        Chunks.of(updates).forEach(chunk -> changeChunk(chunk, begun, by));
    }

    private void changeChunk(List<PackageUpdate> updates, Map<Long, Long> begun, Author by) {
        Map<Long, StoredPackage> kept = packages
                .findAll(updates.stream().map(PackageUpdate::id).toList())
                .stream()
                .collect(Collectors.toMap(StoredPackage::id, one -> one));
        ValueLayout layout = layoutToWrite();
        Instant now = clock.instant();
        List<ActivityEvent> told = new ArrayList<>();
        for (PackageUpdate update : updates) {
            StoredPackage one =
                    Optional.ofNullable(kept.get(update.id())).orElseThrow(() -> new UnknownPackage(update.id()));
            new ExpectedVersion(update.version()).check(one.version(), "package");
            FieldValues before = PackageEvents.facts(one);
            one.become(update.draft(), one.segment(), by, now);
            one.measure(layout, update.draft());
            one.enterRevision(revision(begun, one.segment().id()));
            told.add(PackageEvents.of("changed", one, before, PackageEvents.facts(one)));
        }
        entities.flush();
        questions.ofChanged(kept, updates, now);
        told.forEach(events::publishEvent);
        entities.flush();
        entities.clear();
    }

    /** Brings the queries of changed packages of a segment up to date, as far as they come from its class. */
    public Map<Long, List<RaisedIssue>> screenChanged(String segment, List<NewPackage> changed) {
        return questions.seenAgain(segment(segment), changed, clock.instant());
    }

    public void delete(long id, ExpectedVersion expected) {
        long segmentId = segmentOf(id);
        long revision = revisions.next(segmentId);
        StoredPackage kept = locked(id, expected);
        revisions.depart(segmentId, id, revision);
        revisions.count(segmentId, -1);
        events.publishEvent(PackageEvents.of("deleted", kept, PackageEvents.facts(kept), FieldValues.none()));
        packages.delete(kept);
        entities.flush();
    }

    private Map<Long, Long> begin(long fromId, long toId) {
        Map<Long, Long> begun = new TreeMap<>();
        begun.put(fromId, 0L);
        begun.put(toId, 0L);
        begun.replaceAll((id, none) -> revisions.next(id));
        return begun;
    }

    private static long revision(Map<Long, Long> begun, long segmentId) {
        return begun.getOrDefault(segmentId, 0L);
    }

    private long segmentOf(long id) {
        return packages.segmentOf(id).orElseThrow(() -> new UnknownPackage(id));
    }

    /** The package as it is now that its class is locked. */
    private StoredPackage locked(long id, ExpectedVersion expected) {
        StoredPackage kept = packages.find(id).orElseThrow(() -> new UnknownPackage(id));
        expected.check(kept.version(), "package");
        return kept;
    }
}
