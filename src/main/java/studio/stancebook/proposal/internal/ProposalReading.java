package studio.stancebook.proposal.internal;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;
import studio.stancebook.access.OwnerScope;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.Directory;
import studio.stancebook.account.PersonName;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Malformed;
import studio.stancebook.proposal.Decision;
import studio.stancebook.proposal.JudgedProposal;
import studio.stancebook.proposal.NotableProposals;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalPreview;
import studio.stancebook.proposal.ProposalState;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.RevisionSummary;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.ShownRevision;
import studio.stancebook.proposal.UnknownProposal;
import studio.stancebook.proposal.UnknownRevision;
import studio.stancebook.proposal.WorstFinding;

/** Reads proposals for a person. */
@Component
public class ProposalReading {

    private static final Set<String> SORTABLE = Set.of("name", "stage", "changedAt", "outside", "tooClose");
    private static final Sort LAST_CHANGED_FIRST = Sort.by(Sort.Order.desc("changedAt"));

    private final StoredProposals proposals;
    private final StoredRevisions revisions;
    private final StoredDecisions decisions;
    private final Segments segments;
    private final Directory directory;
    private final Bands bands;
    private final Judge judge;

    ProposalReading(
            StoredProposals proposals,
            StoredRevisions revisions,
            StoredDecisions decisions,
            Segments segments,
            Directory directory,
            Bands bands,
            Judge judge) {
        this.proposals = proposals;
        this.revisions = revisions;
        this.decisions = decisions;
        this.segments = segments;
        this.directory = directory;
        this.bands = bands;
        this.judge = judge;
    }

    /** A page of what the person may see. */
    public Page<ProposalSummary> list(ProposalFilter filter, Pageable page, SignedIn who) {
        String wanted = filter.segment();
        Long segmentId = wanted == null ? null : segments.named(wanted).id();
        Page<StoredProposal> found = proposals.find(
                filter.text().toLowerCase(Locale.ROOT),
                segmentId,
                filter.stage(),
                filter.ownerId(),
                seenBy(who),
                sorted(page));
        return found.map(summaries(found.getContent())::of);
    }

    /** What is newest in listed proposals, by id; without those that were revised since they were listed. */
    public Map<Long, Supplier<DimensionSet>> newestDimensions(List<ProposalSummary> listed, SignedIn who) {
        if (listed.isEmpty()) {
            return Map.of();
        }
        Map<Long, Integer> numbers =
                listed.stream().collect(Collectors.toMap(ProposalSummary::id, ProposalSummary::revision));
        return revisions.newest(numbers.keySet(), seenBy(who)).stream()
                .filter(newest -> numbers.getOrDefault(newest.getProposalId(), 0) == newest.getNumber())
                .collect(Collectors.toMap(
                        StoredRevisions.Newest::getProposalId,
                        newest -> () -> RevisionText.readDimensions(newest.getDimensions(), newest.getRecorded())));
    }

    /** The measure furthest outside its band in each of some proposals, by id; without those that have none. */
    public Map<Long, WorstFinding> worst(List<ProposalSummary> listed, SignedIn who) {
        List<Long> ids = listed.stream()
                .filter(one -> one.outside() > 0)
                .map(ProposalSummary::id)
                .toList();
        Map<Long, WorstFinding> worst = new HashMap<>();
        if (!ids.isEmpty()) {
            revisions
                    .assessments(ids, seenBy(who))
                    .forEach(found -> worstOf(RevisionText.readAssessment(found.getAssessment()))
                            .ifPresent(finding -> worst.put(found.getId(), finding)));
        }
        return worst;
    }

    private static Optional<WorstFinding> worstOf(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.verdict() instanceof Verdict.Outside)
                .max(Comparator.comparingDouble(ProposalReading::bandWidths))
                .map(finding ->
                        new WorstFinding(finding.name(), finding.verdict().key()));
    }

    private static double bandWidths(Finding finding) {
        return finding.verdict() instanceof Verdict.Outside outside
                ? outside.byBandWidths().orElse(0)
                : 0;
    }

    /** What the person may see of what the board looks at, with names that are read once for both lists. */
    public NotableProposals notable(int mostOpen, int mostChanged, SignedIn who) {
        OwnerScope seen = seenBy(who);
        List<StoredProposal> open = proposals.open(seen, Limit.of(mostOpen));
        List<StoredProposal> changed = proposals.lastChanged(seen, Limit.of(mostChanged));
        Summaries summaries =
                summaries(Stream.concat(open.stream(), changed.stream()).toList());
        return new NotableProposals(
                open.stream().map(summaries::of).toList(),
                changed.stream().map(summaries::of).toList());
    }

    private Summaries summaries(List<StoredProposal> found) {
        return new Summaries(
                segmentNames(),
                directory.named(found.stream().map(StoredProposal::ownerId).collect(Collectors.toSet())));
    }

    /** Sums proposals up with the names of what they refer to. */
    private record Summaries(Map<Long, SegmentName> segments, Map<Long, PersonName> owners) {

        ProposalSummary of(StoredProposal proposal) {
            return proposal.summary(named(segments, proposal.segmentId()), nameOf(owners.get(proposal.ownerId())));
        }
    }

    private static OwnerScope seenBy(SignedIn who) {
        return who.scope(Permission.SEE_PROPOSALS);
    }

    private static Pageable sorted(Pageable page) {
        page.getSort().stream()
                .filter(order -> !SORTABLE.contains(order.getProperty()))
                .findFirst()
                .ifPresent(order -> {
                    throw Malformed.ofField(
                            "sort",
                            "Proposals are sorted by one of "
                                    + String.join(
                                            ", ", SORTABLE.stream().sorted().toList()) + ".");
                });
        Sort sort = page.getSortOr(LAST_CHANGED_FIRST).and(Sort.by(Sort.Order.desc("id")));
        return PageRequest.of(page.getPageNumber(), page.getPageSize(), sort);
    }

    /** One proposal with its newest revision. */
    public ProposalView get(long id, SignedIn who) {
        StoredProposal proposal = visible(id, who);
        Map<Long, SegmentName> names = segmentNames();
        RevisionView newest = stored(proposal, proposal.newestRevision(), names);
        String owner = nameOf(directory.named(proposal.ownerId()).orElse(null));
        return proposal.view(named(names, proposal.segmentId()), owner, newest);
    }

    /** One proposal that the person may change. */
    public ProposalView forChange(long id, SignedIn who) {
        changeable(id, who);
        return get(id, who);
    }

    public Page<RevisionSummary> revisions(long id, Pageable page, SignedIn who) {
        StoredProposal proposal = visible(id, who);
        return revisions.summaries(proposal.id(), PageRequest.of(page.getPageNumber(), page.getPageSize()));
    }

    public RevisionView revision(long id, int number, SignedIn who) {
        return stored(visible(id, who), number, segmentNames());
    }

    /** The proposals of a segment that are not shelved, as they were judged last. */
    public List<JudgedProposal> judgedIn(SegmentName segment, int most, SignedIn who) {
        return revisions.judgedIn(segment.id(), seenBy(who), Limit.of(most)).stream()
                .map(found -> new JudgedProposal(
                        found.getId(), found.getName(), RevisionText.readAssessment(found.getAssessment())))
                .toList();
    }

    /** What the bands of now would say of other dimensions of a proposal that the person may change. */
    public ProposalPreview preview(long id, DimensionSet dimensions, SignedIn who) {
        ProposalView proposal = forChange(id, who);
        MeasureChecks.requireSound(dimensions);
        Assessment found = judge.verdicts(dimensions, proposal.segment().key());
        return new ProposalPreview(proposal, dimensions, found);
    }

    /** What the bands of now would say of a proposal that there is not yet. */
    public Assessment preview(String segment, DimensionSet dimensions, SignedIn who) {
        requireMayMake(who);
        MeasureChecks.requireSound(dimensions);
        return judge.verdicts(dimensions, segment);
    }

    static void requireMayMake(SignedIn who) {
        if (!who.may(Permission.MAKE_PROPOSALS)) {
            throw new Forbidden("A viewer reads proposals but makes none.");
        }
    }

    /** A revision with what is shown beside it. */
    public ShownRevision shown(ProposalState state, int mostRevisions) {
        int number = state.revision();
        List<StoredRevision> found = revisions.findByProposalIdAndNumberBetweenOrderByNumber(
                state.id(), number - ShownRevision.MOST_EARLIER, number);
        if (found.isEmpty() || found.get(found.size() - 1).number() != number) {
            throw new UnknownRevision(number);
        }
        RevisionView revision = found.get(found.size() - 1).view(state.segment());
        Map<String, Band> current = bands.current(state.segment());
        return new ShownRevision(
                revision,
                found.subList(0, found.size() - 1).stream()
                        .map(StoredRevision::earlier)
                        .toList(),
                bands.judgedBy(state.segment(), revision.assessment(), current),
                judge.verdicts(revision.dimensions(), Bands.applied(current)),
                revisions.summaries(state.id(), Limit.of(mostRevisions)));
    }

    /** The decisions on a proposal, the last first, by the names that people have now. */
    public List<Decision> decisions(long id, int most) {
        return named(decisions.findByProposalIdOrderByIdDesc(id, Limit.of(most)));
    }

    /** The last decision on a revision. */
    public Optional<Decision> decision(long id, int revision) {
        return decisions
                .findFirstByProposalIdAndRevisionOrderByIdDesc(id, revision)
                .flatMap(found -> named(List.of(found)).stream().findFirst());
    }

    private List<Decision> named(List<StoredDecision> found) {
        Map<Long, PersonName> names =
                directory.named(found.stream().map(StoredDecision::decidedBy).collect(Collectors.toSet()));
        return found.stream()
                .map(one -> one.view(nameOf(names.get(one.decidedBy()))))
                .toList();
    }

    /** Those who own a proposal that the person may see, by name. */
    public List<PersonName> owners(SignedIn who) {
        return directory.named(proposals.owners(seenBy(who))).values().stream()
                .sorted(Comparator.comparing(PersonName::name).thenComparing(PersonName::id))
                .toList();
    }

    StoredProposal visible(long id, SignedIn who) {
        return proposals
                .findById(id)
                .filter(proposal -> who.may(Permission.SEE_PROPOSALS, proposal.ownerId()))
                .orElseThrow(() -> new UnknownProposal(id));
    }

    StoredProposal changeable(long id, SignedIn who) {
        StoredProposal proposal = visible(id, who);
        if (!who.may(Permission.CHANGE_PROPOSALS, proposal.ownerId())) {
            throw new Forbidden("Only its owner and the lead change this proposal.");
        }
        return proposal;
    }

    private RevisionView stored(StoredProposal proposal, int number, Map<Long, SegmentName> names) {
        StoredRevision revision = revisions
                .findByProposalIdAndNumber(proposal.id(), number)
                .orElseThrow(() -> new UnknownRevision(number));
        return revision.view(named(names, revision.segmentId()));
    }

    private Map<Long, SegmentName> segmentNames() {
        return segments.names().stream().collect(Collectors.toMap(SegmentName::id, Function.identity()));
    }

    private static SegmentName named(Map<Long, SegmentName> names, long id) {
        SegmentName name = names.get(id);
        if (name == null) {
            throw new IllegalStateException("There is no segment with the id " + id);
        }
        return name;
    }

    private static String nameOf(@Nullable PersonName person) {
        return person == null ? "" : person.name();
    }
}
