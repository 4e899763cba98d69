package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.IssueCause;
import studio.stancebook.catalogue.NewPackage;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageUpdate;

/** Raises the queries that a write gives rise to, and withdraws those that no longer hold. */
@Component
class DataIssueWords {

    private static final Set<IssueCause> BY_ITSELF = Set.of(IssueCause.BROUGHT_IN, IssueCause.DOES_NOT_CLOSE);
    private static final Set<IssueCause> BESIDE_OTHERS = Set.of(IssueCause.FAR_FROM_CLASS, IssueCause.SAME_DIMENSIONS);

    private final DataIssues queries;
    private final StoredPackages packages;
    private final PackageLookUp lookUp;
    private final Screening screening;
    private final NewRows rows;

    DataIssueWords(
            DataIssues queries, StoredPackages packages, PackageLookUp lookUp, Screening screening, NewRows rows) {
        this.queries = queries;
        this.packages = packages;
        this.lookUp = lookUp;
        this.screening = screening;
        this.rows = rows;
    }

    /** Says that packages are going to be added to a segment, before its change begins. */
    void expectAdditions(String segment) {
        screening.expectAdditions(segment);
    }

    /** Tells of packages that were added. */
    void added(List<StoredPackage> added) {
        screening.added(added);
    }

    /** The questions that packages bring with them, and one for each value that does not close. */
    void ofDrafts(List<StoredPackage> added, List<PackageDraft> drafts, Instant now) {
        List<DataIssue> asked = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            StoredPackage one = added.get(i);
            broughtIn(drafts.get(i)).forEach(raised -> asked.add(about(one, raised, now)));
            notClosing(drafts.get(i)).forEach(raised -> asked.add(about(one, raised, now)));
        }
        rows.insert(asked);
    }

    /** Asks the questions that new packages of a segment give rise to beside the others, and gives them by package. */
    Map<Long, List<RaisedIssue>> afterWriting(StoredSegment segment, List<NewPackage> written, Instant now) {
        List<Long> ids = written.stream().map(NewPackage::id).toList();
        Map<Long, List<RaisedIssue>> raised = screening.of(ids, segment.key());
        alike(segment.id(), written)
                .forEach((id, query) ->
                        raised.computeIfAbsent(id, none -> new ArrayList<>()).add(query));
        List<DataIssue> asked = new ArrayList<>();
        raised.forEach((id, all) -> all.forEach(query -> asked.add(new DataIssue(segment.id(), id, query, now))));
        rows.insert(asked);
        return raised;
    }

    /**
     * Brings the queries of a changed package up to date: one that no longer holds goes, unless a person has answered it
     * and the same would be asked again.
     */
    void afterChange(StoredPackage kept, PackageDraft draft, Instant now) {
        queries.findAllByPackageIdOrderById(kept.id())
                .forEach(known -> known.move(kept.segment().id()));
        PackageUpdate update = new PackageUpdate(kept.id(), kept.version(), draft);
        ofChanged(Map.of(kept.id(), kept), List.of(update), now);
        seenAgain(kept.segment(), List.of(new NewPackage(kept.id(), draft.digest())), now);
    }

    /** As {@link #afterChange}, for what the packages by themselves give rise to. */
    void ofChanged(Map<Long, StoredPackage> kept, List<PackageUpdate> updates, Instant now) {
        Map<Long, List<DataIssue>> known = known(kept.keySet());
        for (PackageUpdate update : updates) {
            StoredPackage one = Objects.requireNonNull(kept.get(update.id()));
            Set<RaisedIssue> raised = new LinkedHashSet<>(broughtIn(update.draft()));
            raised.addAll(notClosing(update.draft()));
            refresh(one.segment(), one.id(), raised, known.getOrDefault(one.id(), List.of()), BY_ITSELF, now);
        }
    }

    /** As {@link #afterChange}, for what packages of a segment give rise to beside the others; gives what is asked anew. */
    Map<Long, List<RaisedIssue>> seenAgain(StoredSegment segment, List<NewPackage> changed, Instant now) {
        List<Long> ids = changed.stream().map(NewPackage::id).toList();
        Map<Long, List<RaisedIssue>> raised = screening.of(ids, segment.key());
        alike(segment.id(), changed)
                .forEach((id, query) ->
                        raised.computeIfAbsent(id, none -> new ArrayList<>()).add(query));
        Map<Long, List<RaisedIssue>> anew = new HashMap<>();
        for (List<Long> chunk : Chunks.of(ids)) {
            Map<Long, List<DataIssue>> known = known(chunk);
            for (Long id : chunk) {
                Set<RaisedIssue> asked = new LinkedHashSet<>(raised.getOrDefault(id, List.of()));
                refresh(segment, id, asked, known.getOrDefault(id, List.of()), BESIDE_OTHERS, now);
                if (!asked.isEmpty()) {
                    anew.put(id, List.copyOf(asked));
                }
            }
        }
        return anew;
    }

    private Map<Long, List<DataIssue>> known(Collection<Long> ids) {
        return queries.findAllByPackageIdInOrderById(ids).stream().collect(Collectors.groupingBy(DataIssue::packageId));
    }

    /** @param raised loses what is asked already */
    private void refresh(
            StoredSegment segment,
            long id,
            Set<RaisedIssue> raised,
            List<DataIssue> known,
            Set<IssueCause> causes,
            Instant now) {
        for (DataIssue one : known) {
            if (causes.contains(one.raised().cause())) {
                boolean holds = raised.removeIf(query -> query.asks(one.raised()));
                if (!holds && one.open() && one.raised().cause() != IssueCause.BROUGHT_IN) {
                    queries.delete(one);
                }
            }
        }
        raised.forEach(query -> queries.save(new DataIssue(segment.id(), id, query, now)));
    }

    private static DataIssue about(StoredPackage kept, RaisedIssue raised, Instant now) {
        return new DataIssue(kept.segment().id(), kept.id(), raised, now);
    }

    private static List<RaisedIssue> broughtIn(PackageDraft draft) {
        return draft.queries().stream()
                .map(question -> new RaisedIssue(IssueCause.BROUGHT_IN, null, question))
                .toList();
    }

    private static List<RaisedIssue> notClosing(PackageDraft draft) {
        return draft.disagreements().stream()
                .map(d -> new RaisedIssue(IssueCause.DOES_NOT_CLOSE, d.keys().get(0), d.message()))
                .toList();
    }

    /** For each package whose dimensions another one of its segment has too, the query that says so. */
    private Map<Long, RaisedIssue> alike(long segmentId, List<NewPackage> written) {
        Map<Long, Long> others = new HashMap<>();
        Chunks.of(written).forEach(chunk -> others.putAll(othersAlike(segmentId, chunk)));
        Map<Long, StoredPackages.Title> titles = new HashMap<>();
        Chunks.of(List.copyOf(new HashSet<>(others.values())))
                .forEach(chunk -> packages.titles(chunk).forEach(title -> titles.put(title.id(), title)));
        Map<Long, RaisedIssue> found = new HashMap<>();
        others.forEach((id, other) -> {
            StoredPackages.Title title = titles.get(other);
            if (title != null) {
                found.put(id, sameAs(title));
            }
        });
        return found;
    }

    /** For each package that is not alone with its dimensions, one of those that share them. */
    private Map<Long, Long> othersAlike(long segmentId, List<NewPackage> written) {
        Map<Long, Long> others = new HashMap<>();
        Map<String, List<NewPackage>> byDigest = written.stream().collect(Collectors.groupingBy(NewPackage::digest));
        for (PackageLookUp.Alike group : lookUp.ofDigests(segmentId, byDigest.keySet())) {
            if (group.firstId() != group.lastId()) {
                byDigest.getOrDefault(group.digest(), List.of())
                        .forEach(own ->
                                others.put(own.id(), own.id() == group.firstId() ? group.lastId() : group.firstId()));
            }
        }
        return others;
    }

    private static RaisedIssue sameAs(StoredPackages.Title other) {
        String year = other.modelYear() == null ? "" : " (" + other.modelYear() + ")";
        return new RaisedIssue(
                IssueCause.SAME_DIMENSIONS,
                null,
                "Exactly the same dimensions as " + other.name() + year + ": the same vehicle twice?");
    }
}
