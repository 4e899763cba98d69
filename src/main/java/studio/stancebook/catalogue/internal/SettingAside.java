package studio.stancebook.catalogue.internal;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Author;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.AsideDraft;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.classes.ClassRevisions;
import studio.stancebook.classes.layout.CurrentLayout;
import studio.stancebook.classes.layout.ValueLayout;
import studio.stancebook.dimension.Axle;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.NotFound;

/** Takes packages and single values out of their class and back; what is recorded stays as it is. */
@Component
@Transactional
public class SettingAside {

    private final StoredPackages packages;
    private final ClassRevisions revisions;
    private final CurrentLayout layouts;
    private final Remeasure remeasure;
    private final SetAsideIndex aparts;
    private final IssueSettling settling;
    private final EntityManager entities;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    SettingAside(
            StoredPackages packages,
            ClassRevisions revisions,
            CurrentLayout layouts,
            Remeasure remeasure,
            SetAsideIndex aparts,
            IssueSettling settling,
            EntityManager entities,
            Clock clock,
            ApplicationEventPublisher events) {
        this.packages = packages;
        this.revisions = revisions;
        this.layouts = layouts;
        this.remeasure = remeasure;
        this.aparts = aparts;
        this.settling = settling;
        this.entities = entities;
        this.clock = clock;
        this.events = events;
    }

    /** A package whose class has been locked for a change, with the revision that the change leads to. */
    private record Begun(StoredPackage kept, long segmentId, long revision) {}

    /** @param expected null where it is part of something larger, such as bringing in, whose doer tells it */
    public void setAside(long id, @Nullable ExpectedVersion expected, String reason, Author by) {
        ValueAside apart = apart(reason, by, Optional.empty());
        Begun begun = begin(id, expected);
        if (begun.kept().counts()) {
            revisions.depart(begun.segmentId(), id, begun.revision());
        }
        begun.kept().setAside(apart);
        flush(begun);
        int settled = settling.settleFor(settling.askedAbout(id), null, apart.reason(), by);
        if (expected != null) {
            FieldValues after = FieldValues.of("reason", apart.reason());
            tell("set aside", begun, FieldValues.none(), settled(after, settled));
        }
    }

    /**
     * Sets aside packages, or values of them, that the transaction under way brought in, some at a time; who brings them in
     * tells it.
     */
    public void setAside(List<AsideDraft> drafts, Author by) {
        Map<Long, Long> begun = new HashMap<>();
        Chunks.of(drafts).forEach(chunk -> setAsideChunk(chunk, begun, by));
    }

    private void setAsideChunk(List<AsideDraft> drafts, Map<Long, Long> begun, Author by) {
        Map<Long, StoredPackage> kept = packages
                .findAll(drafts.stream().map(AsideDraft::packageId).toList())
                .stream()
                .collect(Collectors.toMap(StoredPackage::id, Function.identity()));
        Map<Long, List<Long>> departed = new HashMap<>();
        for (AsideDraft draft : drafts) {
            StoredPackage one = Objects.requireNonNull(kept.get(draft.packageId()));
            long revision = begun.computeIfAbsent(one.segment().id(), revisions::next);
            setAside(one, draft, revision, by);
            if (!one.counts()) {
                departed.computeIfAbsent(revision, none -> new ArrayList<>()).add(one.id());
            }
        }
        entities.flush();
        aparts.noteAll(kept.keySet());
        departed.forEach((revision, ids) -> revisions.departAll(ids, revision));
        Map<Long, List<DataIssue>> asked = settling.askedAbout(kept.keySet());
        drafts.forEach(draft -> settle(
                Objects.requireNonNull(kept.get(draft.packageId())),
                draft,
                asked.getOrDefault(draft.packageId(), List.of()),
                by));
        entities.flush();
        kept.values().forEach(entities::detach);
    }

    /** Sets aside a package, or values of it, that was there before. */
    public void setAsideAgain(AsideDraft draft, Author by) {
        Begun begun = begin(draft.packageId(), null);
        StoredPackage kept = begun.kept();
        FieldValues before = facts(kept);
        if (draft.reason() != null && kept.counts()) {
            revisions.depart(begun.segmentId(), kept.id(), begun.revision());
        }
        setAside(kept, draft, begun.revision(), by);
        flush(begun);
        int settled = settle(kept, draft, settling.askedAbout(kept.id()), by);
        tell("set aside", begun, before, settled(facts(kept), settled));
        entities.flush();
        entities.detach(kept);
    }

    private static FieldValues facts(StoredPackage kept) {
        FieldValues facts = reason(kept.setAside());
        kept.valuesSetAside().forEach((key, apart) -> facts.and(key, apart.reason()));
        return facts;
    }

    private void setAside(StoredPackage kept, AsideDraft draft, long revision, Author by) {
        if (draft.reason() != null) {
            kept.setAside(apart(draft.reason(), by, Optional.empty()));
        }
        if (!draft.valueReasons().isEmpty()) {
            draft.valueReasons()
                    .forEach((key, reason) -> kept.setValueAside(key, apart(reason, by, keyError(kept, key))));
            measure(kept);
            kept.enterRevision(revision);
        }
    }

    /** @throws Conflict if it is not set aside */
    public void takeBack(long id, ExpectedVersion expected, Author by) {
        Begun begun = begin(id, expected);
        if (begun.kept().counts()) {
            throw new Conflict("The package counts in its class: it is not set aside.");
        }
        FieldValues before = reason(begun.kept().setAside());
        begun.kept().takeBack(by, clock.instant());
        begun.kept().enterRevision(begun.revision());
        flush(begun);
        tell("taken back", begun, before, FieldValues.none());
    }

    /** @param expected null where it is part of something larger, such as bringing in, whose doer tells it */
    public void setValueAside(long id, @Nullable ExpectedVersion expected, String key, String reason, Author by) {
        Begun begun = begin(id, expected);
        FieldValues before = value(begun, key);
        begun.kept().setValueAside(key, apart(reason, by, keyError(begun.kept(), key)));
        finish(begun);
        int settled =
                settling.settleFor(settling.askedAbout(id), affected(begun.kept(), Set.of(key)), reason.strip(), by);
        if (expected != null) {
            tell("value set aside", begun, before, settled(value(begun, key), settled));
        }
    }

    /** @throws NotFound if the value is not set aside */
    public void takeValueBack(long id, ExpectedVersion expected, String key, Author by) {
        Begun begun = begin(id, expected);
        FieldValues before = value(begun, key);
        if (!begun.kept().takeValueBack(key, by, clock.instant())) {
            throw new NotFound("value set aside with the key", key);
        }
        finish(begun);
        tell("value taken back", begun, before, value(begun, key));
    }

    private int settle(StoredPackage kept, AsideDraft draft, List<DataIssue> asked, Author by) {
        int settled = 0;
        for (Map.Entry<String, String> one : draft.valueReasons().entrySet()) {
            settled += settling.settleFor(asked, affected(kept, Set.of(one.getKey())), one.getValue(), by);
        }
        return draft.reason() == null ? settled : settled + settling.settleFor(asked, null, draft.reason(), by);
    }

    /** The values, and the measures that cannot be had without them. */
    private Set<String> affected(StoredPackage kept, Set<String> keys) {
        Set<String> affected = new HashSet<>(keys);
        ValueLayout layout = layouts.get();
        double[] with = layout.measuresOf(kept.dimensions());
        double[] without = layout.classMeasuresOf(kept.dimensions(), keys);
        for (int i = 0; i < with.length; i++) {
            if (!Double.isNaN(with[i]) && Double.isNaN(without[i])) {
                affected.add(layout.keys().get(i));
            }
        }
        for (Axle axle : Axle.values()) {
            if (keys.contains(axle.tyreKey())) {
                affected.add(axle.tyreDiameter().key());
                affected.add(axle.rimDiameter().key());
            }
        }
        return affected;
    }

    private static FieldValues settled(FieldValues after, int queries) {
        return after.and("queriesSettled", queries == 0 ? "" : queries);
    }

    private void tell(String action, Begun begun, FieldValues before, FieldValues after) {
        events.publishEvent(PackageEvents.of(action, begun.kept(), before, after));
    }

    private static FieldValues reason(@Nullable SetAside apart) {
        return apart == null ? FieldValues.none() : FieldValues.of("reason", apart.reason());
    }

    /** Why a value is set aside, under its key. */
    private static FieldValues value(Begun begun, String key) {
        ValueAside apart = begun.kept().valuesSetAside().get(key);
        return apart == null ? FieldValues.none() : FieldValues.of(key, apart.reason());
    }

    private Begun begin(long id, @Nullable ExpectedVersion expected) {
        long segmentId = packages.segmentOf(id).orElseThrow(() -> new UnknownPackage(id));
        long revision = revisions.next(segmentId);
        StoredPackage kept = packages.find(id).orElseThrow(() -> new UnknownPackage(id));
        if (expected != null) {
            expected.check(kept.version(), "package");
        }
        return new Begun(kept, segmentId, revision);
    }

    private void finish(Begun begun) {
        measure(begun.kept());
        begun.kept().enterRevision(begun.revision());
        flush(begun);
    }

    private void measure(StoredPackage kept) {
        ValueLayout layout = layouts.get();
        kept.measure(layout);
        remeasure.written(layout);
    }

    private void flush(Begun begun) {
        entities.flush();
        aparts.note(begun.kept());
    }

    private ValueAside apart(String reason, Author by, Optional<FieldError> another) {
        List<FieldError> errors = new ArrayList<>();
        CatalogueRules.reason(reason.strip()).ifPresent(errors::add);
        another.ifPresent(errors::add);
        CatalogueRules.refuse(errors);
        return new ValueAside(reason.strip(), by, clock.instant());
    }

    private Optional<FieldError> keyError(StoredPackage kept, String key) {
        boolean known = layouts.get().place(key).isPresent()
                || kept.dimensions().valueKeys().contains(key);
        return known
                ? Optional.empty()
                : Optional.of(new FieldError(
                        "value",
                        "\"" + CatalogueRules.shortened(key)
                                + "\" is neither a measure nor a value that is recorded of this package."));
    }
}
