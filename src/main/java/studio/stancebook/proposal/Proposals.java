package studio.stancebook.proposal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.PersonName;
import studio.stancebook.band.Assessment;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.internal.ProposalReading;
import studio.stancebook.proposal.internal.ProposalStateReader;
import studio.stancebook.proposal.internal.ProposalWriting;

/** The proposals of the studio, as far as the person who asks may see and change them: {@link Permission}. */
@Component
@Transactional
public class Proposals {

    private final ProposalReading reading;
    private final ProposalStateReader states;
    private final ProposalWriting writing;

    Proposals(ProposalReading reading, ProposalStateReader states, ProposalWriting writing) {
        this.reading = reading;
        this.states = states;
        this.writing = writing;
    }

    /**
     * A page of proposals, the last changed first unless sorted by {@code name}, {@code stage}, {@code changedAt}, {@code
     * outside} or {@code tooClose}.
     *
     * @throws studio.stancebook.classes.UnknownSegment if the filter names one that is not there
     * @throws studio.stancebook.problem.Malformed if it is sorted by anything else
     */
    @Transactional(readOnly = true)
    public Page<ProposalSummary> list(ProposalFilter filter, Pageable page, SignedIn who) {
        return reading.list(filter, page, who);
    }

    /**
     * The dimensions of the revisions that were listed, by id of the proposal; without those that were revised since. Read now,
     * made out when they are asked for.
     */
    @Transactional(readOnly = true)
    public Map<Long, Supplier<DimensionSet>> newestDimensions(List<ProposalSummary> listed, SignedIn who) {
        return reading.newestDimensions(listed, who);
    }

    /** The measure furthest outside its band in the newest revision of each listed proposal that has one, by id. */
    @Transactional(readOnly = true)
    public Map<Long, WorstFinding> worst(List<ProposalSummary> listed, SignedIn who) {
        return reading.worst(listed, who);
    }

    /** What the board looks at, as far as the person may see it. */
    @Transactional(readOnly = true)
    public NotableProposals notable(int mostOpen, int mostChanged, SignedIn who) {
        return reading.notable(mostOpen, mostChanged, who);
    }

    /** The owners of the proposals that the person may see, by name. */
    @Transactional(readOnly = true)
    public List<PersonName> owners(SignedIn who) {
        return reading.owners(who);
    }

    /** @throws UnknownProposal if there is none of this id that the person may see */
    @Transactional(readOnly = true)
    public ProposalView get(long id, SignedIn who) {
        return reading.get(id, who);
    }

    /**
     * A proposal that the person may change.
     *
     * @throws UnknownProposal if there is none of this id that the person may see
     * @throws studio.stancebook.problem.Forbidden if the person may not
     */
    @Transactional(readOnly = true)
    public ProposalView forChange(long id, SignedIn who) {
        return reading.forChange(id, who);
    }

    /** The proposals of a segment that are not shelved and that the person may see, the last changed first. */
    @Transactional(readOnly = true)
    public List<JudgedProposal> judgedIn(SegmentName segment, int most, SignedIn who) {
        return reading.judgedIn(segment, most, who);
    }

    /**
     * The decisions on a proposal whose state was read, the last first.
     *
     * @param most how many
     */
    @Transactional(readOnly = true)
    public List<Decision> decisions(ProposalState state, int most) {
        return reading.decisions(state.id(), most);
    }

    /** The last decision on a revision of a proposal that was read. */
    @Transactional(readOnly = true)
    public Optional<Decision> decision(ProposalView proposal, int revision) {
        return reading.decision(proposal.id(), revision);
    }

    /** The revisions of a proposal, newest first. */
    @Transactional(readOnly = true)
    public Page<RevisionSummary> revisions(long id, Pageable page, SignedIn who) {
        return reading.revisions(id, page, who);
    }

    /** @throws UnknownRevision if the proposal has none of this number */
    @Transactional(readOnly = true)
    public RevisionView revision(long id, int number, SignedIn who) {
        return reading.revision(id, number, who);
    }

    /**
     * The revision that somebody asks for of a proposal already read.
     *
     * @param number null for the newest
     * @throws UnknownRevision if the proposal has none of this number
     */
    @Transactional(readOnly = true)
    public RevisionView revision(ProposalView proposal, @Nullable Integer number, SignedIn who) {
        return number == null || number == proposal.newest().number()
                ? proposal.newest()
                : reading.revision(proposal.id(), number, who);
    }

    /**
     * The state of everything that is shown of a revision.
     *
     * @param revision null for the newest
     * @throws UnknownProposal if there is none of this id that the person may see
     * @throws UnknownRevision if the proposal has none of this number
     */
    @Transactional(readOnly = true)
    public ProposalState state(long id, @Nullable Integer revision, SignedIn who) {
        return states.read(id, revision, who);
    }

    /** What is shown of a revision that somebody may see, which is at least as new as {@code state}. */
    @Transactional(readOnly = true)
    public ShownRevision shown(ProposalState state, int mostRevisions) {
        return reading.shown(state, mostRevisions);
    }

    /**
     * What a revision of these dimensions would be judged to be, by the bands of now and without single moves. Keeps
     * nothing.
     *
     * @throws UnknownProposal if there is none of this id that the person may see
     * @throws studio.stancebook.problem.Forbidden if the person may not change it
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming every value that cannot be
     */
    @Transactional(readOnly = true)
    public ProposalPreview preview(long id, DimensionSet dimensions, SignedIn who) {
        return reading.preview(id, dimensions, who);
    }

    /**
     * What a new proposal of these dimensions would be judged to be, by the bands of now and without single moves. Keeps
     * nothing.
     *
     * @param segment its key
     * @throws studio.stancebook.problem.Forbidden if the person may not make proposals
     * @throws studio.stancebook.classes.UnknownSegment if there is no such segment
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming every value that cannot be
     */
    @Transactional(readOnly = true)
    public Assessment preview(String segment, DimensionSet dimensions, SignedIn who) {
        return reading.preview(segment, dimensions, who);
    }

    /**
     * Makes a proposal with its first revision, owned by the person.
     *
     * @throws studio.stancebook.problem.Forbidden if the person may not
     * @throws studio.stancebook.problem.Impossible naming every field that cannot be accepted
     * @throws studio.stancebook.classes.UnknownSegment if there is no such segment
     */
    public ProposalView make(ProposalDraft draft, SignedIn who) {
        return reading.get(writing.make(draft, who), who);
    }

    /**
     * Changes name, segment and stage.
     *
     * @throws UnknownProposal if there is none of this id that the person may see
     * @throws studio.stancebook.problem.Forbidden if the person may not
     * @throws studio.stancebook.problem.Stale if it was changed since
     * @throws studio.stancebook.problem.Impossible naming every field that cannot be accepted
     */
    public ProposalView change(long id, ExpectedVersion expected, ProposalChange change, SignedIn who) {
        writing.change(id, expected, change, who);
        return reading.get(id, who);
    }

    /**
     * Decides on the newest revision, which brings the proposal to the stage of the outcome.
     *
     * @throws UnknownProposal if there is none of this id that the person may see
     * @throws studio.stancebook.problem.Forbidden if the person may not
     * @throws studio.stancebook.problem.Stale if there is a newer revision than the one decided on
     * @throws studio.stancebook.problem.Impossible if the reason cannot be accepted
     */
    public void decide(long id, DecisionDraft draft, SignedIn who) {
        writing.decide(id, draft, who);
    }

    /**
     * Adds a revision, judged by the bands of now.
     *
     * @param expected the version of the proposal that the revision was made from
     * @param note may be empty
     * @throws UnknownProposal if there is none of this id that the person may see
     * @throws studio.stancebook.problem.Forbidden if the person may not
     * @throws studio.stancebook.problem.Stale if it was changed since
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming every value that cannot be
     */
    public ProposalView revise(long id, ExpectedVersion expected, DimensionSet dimensions, String note, SignedIn who) {
        writing.revise(id, expected, dimensions, note, who);
        return reading.get(id, who);
    }
}
