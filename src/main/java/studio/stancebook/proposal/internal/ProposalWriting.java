package studio.stancebook.proposal.internal;

import java.time.Clock;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Recorded;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Stale;
import studio.stancebook.proposal.DecisionDraft;
import studio.stancebook.proposal.ProposalChange;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalRules;
import studio.stancebook.proposal.Stage;

/** Makes, changes and revises proposals for a person. */
@Component
public class ProposalWriting {

    private final StoredProposals proposals;
    private final StoredRevisions revisions;
    private final StoredDecisions decisions;
    private final ProposalReading reading;
    private final Segments segments;
    private final Judge judge;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ProposalWriting(
            StoredProposals proposals,
            StoredRevisions revisions,
            StoredDecisions decisions,
            ProposalReading reading,
            Segments segments,
            Judge judge,
            Clock clock,
            ApplicationEventPublisher events) {
        this.proposals = proposals;
        this.revisions = revisions;
        this.decisions = decisions;
        this.reading = reading;
        this.segments = segments;
        this.judge = judge;
        this.clock = clock;
        this.events = events;
    }

    /** Makes a proposal with its first revision. */
    public long make(ProposalDraft draft, SignedIn who) {
        ProposalReading.requireMayMake(who);
        require(ProposalRules.errors(draft.name(), draft.note()), draft.dimensions());
        SegmentName segment = segments.named(draft.segment());
        Instant now = clock.instant();
        StoredProposal proposal = proposals.saveAndFlush(new StoredProposal(draft.name(), segment.id(), who, now));
        DimensionSet marked = withOwnOrigins(draft.dimensions()).markedSince(null, mark(who, now));
        StoredRevision first = new StoredRevision(proposal.id(), 1, marked, draft.note(), who, now);
        add(proposal, first, marked, segment, who, now);
        FieldValues made = facts(proposal, segment).and("note", draft.note()).and(DimensionJson.flat(marked));
        tell("made", proposal, FieldValues.none(), made);
        return proposal.id();
    }

    /** Changes name, segment and stage. */
    public void change(long id, ExpectedVersion expected, ProposalChange change, SignedIn who) {
        StoredProposal proposal = reading.changeable(id, who);
        expected.check(proposal.version(), "proposal");
        requireMay(proposal.stage(), change.stage(), who);
        ErrorList errors = new ErrorList();
        ProposalRules.name(change.name()).ifPresent(errors::add);
        require(errors, null);
        SegmentName segment = segments.named(change.segment());
        FieldValues before = facts(proposal, segmentOf(proposal));
        boolean moves = segment.id() != proposal.segmentId();
        Instant now = clock.instant();
        proposal.become(change.name(), segment.id(), change.stage(), who, now);
        if (moves) {
            moveTo(segment, proposal, who, now);
        } else {
            orStale(() -> proposals.saveAndFlush(proposal));
        }
        tell("changed", proposal, before, facts(proposal, segment));
    }

    /** Decides on the newest revision, which brings the proposal to the stage of the outcome. */
    public void decide(long id, DecisionDraft draft, SignedIn who) {
        StoredProposal proposal = reading.changeable(id, who);
        if (!who.may(Permission.AGREE_TO_PROPOSALS)) {
            throw new Forbidden("Only the lead decides on proposals.");
        }
        if (draft.revision() != proposal.newestRevision()) {
            throw new Stale(
                    "There is a newer revision, " + proposal.newestRevision() + ": look at it before you decide.");
        }
        ErrorList errors = new ErrorList();
        ProposalRules.reason(draft.reason()).ifPresent(errors::add);
        require(errors, null);
        Instant now = clock.instant();
        SegmentName segment = segmentOf(proposal);
        FieldValues before = facts(proposal, segment);
        proposal.become(proposal.name(), proposal.segmentId(), draft.outcome().stage(), who, now);
        orStale(() -> proposals.saveAndFlush(proposal));
        decisions.save(new StoredDecision(proposal.id(), draft, who, now));
        FieldValues after =
                facts(proposal, segment).and("decision", draft.outcome().key()).and("reason", draft.reason());
        tell("decided", proposal, before, after);
    }

    private void tell(String action, StoredProposal proposal, FieldValues before, FieldValues after) {
        events.publishEvent(ActivityEvent.of(action, "proposal", proposal.id(), proposal.name(), before, after));
    }

    private static FieldValues facts(StoredProposal proposal, SegmentName segment) {
        return FieldValues.of("name", proposal.name())
                .and("segment", segment.key())
                .and("stage", proposal.stage().key())
                .and("revision", proposal.newestRevision());
    }

    private static void requireMay(Stage from, Stage to, SignedIn who) {
        if (from != to && !(from.mayBeSetBy(who) && to.mayBeSetBy(who))) {
            throw new Forbidden("Only the lead says that a proposal is agreed, or that it is no longer.");
        }
    }

    /** The same dimensions judged by the bands of another segment are a revision of their own. */
    private void moveTo(SegmentName segment, StoredProposal proposal, SignedIn who, Instant now) {
        DimensionSet dimensions = newest(proposal).dimensions();
        String note = "Judged as " + segment.name() + " from now on.";
        StoredRevision next =
                new StoredRevision(proposal.id(), proposal.newestRevision() + 1, dimensions, note, who, now);
        add(proposal, next, dimensions, segment, who, now);
    }

    /** Adds a revision. */
    public void revise(long id, ExpectedVersion expected, DimensionSet dimensions, String note, SignedIn who) {
        StoredProposal proposal = reading.changeable(id, who);
        expected.check(proposal.version(), "proposal");
        ErrorList errors = new ErrorList();
        ProposalRules.note(note.strip()).ifPresent(errors::add);
        require(errors, dimensions);
        Instant now = clock.instant();
        DimensionSet earlier = newest(proposal).dimensions();
        DimensionSet marked = withOwnOrigins(dimensions).markedSince(earlier, mark(who, now));
        SegmentName segment = segmentOf(proposal);
        FieldValues before = facts(proposal, segment).and(DimensionJson.flat(earlier));
        StoredRevision next =
                new StoredRevision(proposal.id(), proposal.newestRevision() + 1, marked, note.strip(), who, now);
        add(proposal, next, marked, segment, who, now);
        FieldValues after = facts(proposal, segment).and("note", note.strip()).and(DimensionJson.flat(marked));
        tell("revised", proposal, before, after);
    }

    private void add(
            StoredProposal proposal,
            StoredRevision revision,
            DimensionSet dimensions,
            SegmentName segment,
            SignedIn who,
            Instant now) {
        Judge.Judgement judgement = judge.judge(dimensions, segment.key());
        revision.judgedBy(segment.id(), judgement);
        proposal.reach(revision, who, now);
        orStale(() -> proposals.saveAndFlush(proposal));
        orStale(() -> revisions.saveAndFlush(revision));
    }

    private static Recorded mark(SignedIn who, Instant now) {
        return new Recorded(who.personId(), who.name(), now);
    }

    /** An origin of the whole set, of which the kept form knows nothing, given to each value instead. */
    private static DimensionSet withOwnOrigins(DimensionSet set) {
        DimensionSetBuilder builder = set.toBuilder().origin(Origin.DRAWING);
        set.valueKeys().stream()
                .filter(key -> set.originOf(key) != Origin.DRAWING)
                .forEach(key -> builder.origin(key, set.originOf(key)));
        return builder.build();
    }

    private StoredRevision newest(StoredProposal proposal) {
        return revisions
                .findByProposalIdAndNumber(proposal.id(), proposal.newestRevision())
                .orElseThrow();
    }

    private SegmentName segmentOf(StoredProposal proposal) {
        return segments.names().stream()
                .filter(name -> name.id() == proposal.segmentId())
                .findFirst()
                .orElseThrow();
    }

    /** Everything that is wrong at once: texts, ranges, and what does not close. */
    private static void require(ErrorList errors, @Nullable DimensionSet dimensions) {
        boolean texts = !errors.isEmpty();
        if (dimensions != null) {
            try {
                MeasureChecks.requireSound(dimensions);
            } catch (ImpossibleDimensions impossible) {
                errors.addAll(impossible);
            }
        }
        if (!errors.isEmpty()) {
            throw texts ? Impossible.of(errors) : new ImpossibleDimensions(errors);
        }
    }

    private static void orStale(Runnable write) {
        try {
            write.run();
        } catch (ObjectOptimisticLockingFailureException | DataIntegrityViolationException changedMeanwhile) {
            throw new Stale("The proposal was changed by somebody else at the same moment: read it again.");
        }
    }
}
