package studio.stancebook.proposal.internal;

import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import studio.stancebook.proposal.RevisionSummary;

/** The revisions of all proposals. */
public interface StoredRevisions extends Repository<StoredRevision, Long> {

    StoredRevision saveAndFlush(StoredRevision revision);

    Optional<StoredRevision> findByProposalIdAndNumber(long proposalId, int number);

    /** Newest first. */
    @Query("select new studio.stancebook.proposal.RevisionSummary(r.number, r.note, r.authorName, r.madeAt, r.judged,"
            + " r.outside, r.tooClose) from StoredRevision r where r.proposalId = :proposalId order by r.number desc")
    Page<RevisionSummary> summaries(long proposalId, Pageable page);
}
