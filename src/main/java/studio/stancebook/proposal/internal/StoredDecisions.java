package studio.stancebook.proposal.internal;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.repository.Repository;

/** The decisions on all proposals. */
interface StoredDecisions extends Repository<StoredDecision, Long> {

    StoredDecision save(StoredDecision decision);

    Optional<StoredDecision> findFirstByProposalIdAndRevisionOrderByIdDesc(long proposalId, int revision);

    /** The last first. */
    List<StoredDecision> findByProposalIdOrderByIdDesc(long proposalId, Limit most);
}
