package studio.stancebook.proposal.internal;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import studio.stancebook.access.OwnerScope;
import studio.stancebook.proposal.Stage;

/** The proposals. */
public interface StoredProposals extends Repository<StoredProposal, Long> {

    StoredProposal saveAndFlush(StoredProposal proposal);

    Optional<StoredProposal> findById(long id);

    /**
     * Those in a scope whose name has a text in it, of a segment, a stage and an owner, each of which may be null for any.
     *
     * @param text in lower case; empty for any
     */
    @Query("select p from StoredProposal p where (:text = '' or locate(:text, lower(p.name)) > 0)"
            + " and (:segmentId is null or p.segmentId = :segmentId)"
            + " and (:stage is null or p.stage = :stage) and (:ownerId is null or p.ownerId = :ownerId) and "
            + OwnerScope.CONDITION)
    Page<StoredProposal> find(
            String text,
            @Nullable Long segmentId,
            @Nullable Stage stage,
            @Nullable Long ownerId,
            OwnerScope scope,
            Pageable page);

    /** Those that are neither agreed nor shelved, in a scope; the most outside first. */
    @Query("select p from StoredProposal p where " + OwnerScope.CONDITION + " and p.stage in"
            + " (studio.stancebook.proposal.Stage.DRAFT, studio.stancebook.proposal.Stage.FOR_REVIEW)"
            + " order by p.outside desc, p.id desc")
    List<StoredProposal> open(OwnerScope scope, Limit most);

    /** Those in a scope; the last changed first. */
    @Query("select p from StoredProposal p where " + OwnerScope.CONDITION + " order by p.changedAt desc, p.id desc")
    List<StoredProposal> lastChanged(OwnerScope scope, Limit most);

    /** The ids of all who own a proposal in a scope. */
    @Query("select distinct p.ownerId from StoredProposal p where " + OwnerScope.CONDITION)
    List<Long> owners(OwnerScope scope);
}
