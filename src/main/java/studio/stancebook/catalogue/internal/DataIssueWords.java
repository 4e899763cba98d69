package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.IssueCause;
import studio.stancebook.catalogue.NewPackage;
import studio.stancebook.catalogue.PackageDraft;

/** Raises the queries that a write gives rise to, and withdraws those that no longer hold. */
@Component
class DataIssueWords {

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
        Set<RaisedIssue> raised = new HashSet<>(broughtIn(draft));
        raised.addAll(notClosing(draft));
        raised.addAll(screening.of(List.of(kept.id()), draft.segment()).getOrDefault(kept.id(), List.of()));
        Map<Long, RaisedIssue> alike = alike(kept.segment().id(), List.of(new NewPackage(kept.id(), draft.digest())));
        raised.addAll(alike.values());
        for (DataIssue known : queries.findAllByPackageIdOrderById(kept.id())) {
            known.move(kept.segment().id());
            boolean holds = raised.removeIf(query -> query.asks(known.raised()));
            if (!holds && known.open() && known.raised().cause() != IssueCause.BROUGHT_IN) {
                queries.delete(known);
            }
        }
        raised.forEach(query -> queries.save(about(kept, query, now)));
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
