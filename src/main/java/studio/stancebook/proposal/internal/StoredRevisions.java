package studio.stancebook.proposal.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import studio.stancebook.access.OwnerScope;
import studio.stancebook.proposal.RevisionSummary;

/** The revisions of all proposals. */
public interface StoredRevisions extends Repository<StoredRevision, Long> {

    String SUMMARIES =
            "select new studio.stancebook.proposal.RevisionSummary(r.number, r.note, r.authorNameNow, r.madeAt,"
                    + " r.judged, r.outside, r.tooClose) from StoredRevision r where r.proposalId = :proposalId"
                    + " order by r.number desc";

    StoredRevision saveAndFlush(StoredRevision revision);

    Optional<StoredRevision> findByProposalIdAndNumber(long proposalId, int number);

    List<StoredRevision> findByProposalIdAndNumberBetweenOrderByNumber(long proposalId, int first, int last);

    /** The newest revisions of the proposals of a segment in a scope, but for those shelved; the last changed first. */
    @Query("select p.id as id, p.name as name, r.assessment as assessment from StoredProposal p, StoredRevision r"
            + " where r.proposalId = p.id and r.number = p.newestRevision and r.segmentId = :segmentId"
            + " and p.stage <> studio.stancebook.proposal.Stage.SHELVED"
            + " and " + OwnerScope.CONDITION + " order by p.changedAt desc, p.id desc")
    List<Judged> judgedIn(long segmentId, OwnerScope scope, Limit most);

    /** The assessments of the newest revisions of these proposals that are in a scope. */
    @Query("select p.id as id, p.name as name, r.assessment as assessment from StoredProposal p, StoredRevision r"
            + " where r.proposalId = p.id and r.number = p.newestRevision and p.id in :ids and " + OwnerScope.CONDITION)
    List<Judged> assessments(Collection<Long> ids, OwnerScope scope);

    /** A proposal with the assessment of its newest revision as it is kept. */
    interface Judged {

        long getId();

        String getName();

        String getAssessment();
    }

    /** The dimensions of the newest revision of each of these proposals that is in a scope. */
    @Query("select r.proposalId as proposalId, r.number as number, r.dimensions as dimensions, r.recorded as recorded"
            + " from StoredProposal p, StoredRevision r where r.proposalId = p.id and r.number = p.newestRevision"
            + " and p.id in :ids and " + OwnerScope.CONDITION)
    List<Newest> newest(Collection<Long> ids, OwnerScope scope);

    /** The newest revision of a proposal, with its dimensions as they are kept. */
    interface Newest {

        long getProposalId();

        int getNumber();

        String getDimensions();

        String getRecorded();
    }

    /** Newest first. */
    @Query(SUMMARIES)
    Page<RevisionSummary> summaries(long proposalId, Pageable page);

    /** As {@link #summaries(long, Pageable)}, without counting them. */
    @Query(SUMMARIES)
    List<RevisionSummary> summaries(long proposalId, Limit most);
}
