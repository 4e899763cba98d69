package studio.stancebook.proposal.internal;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import studio.stancebook.proposal.Stage;

/** The proposals. */
public interface StoredProposals extends Repository<StoredProposal, Long> {

    StoredProposal saveAndFlush(StoredProposal proposal);

    Optional<StoredProposal> findById(long id);

    /**
     * Those whose name has a text in it, of a segment, a stage and an owner, each of which may be null for any.
     *
     * @param text in lower case; empty for any
     */
    @Query("select p from StoredProposal p where (:text = '' or locate(:text, lower(p.name)) > 0)"
            + " and (:segmentId is null or p.segmentId = :segmentId)"
            + " and (:stage is null or p.stage = :stage) and (:ownerId is null or p.ownerId = :ownerId)")
    Page<StoredProposal> find(
            String text, @Nullable Long segmentId, @Nullable Stage stage, @Nullable Long ownerId, Pageable page);

    /** Those that are neither agreed nor shelved, of an owner or, for null, of anybody; the most outside first. */
    @Query("select p from StoredProposal p where (:ownerId is null or p.ownerId = :ownerId) and p.stage in"
            + " (studio.stancebook.proposal.Stage.DRAFT, studio.stancebook.proposal.Stage.FOR_REVIEW)"
            + " order by p.outside desc, p.id desc")
    List<StoredProposal> open(@Nullable Long ownerId, Limit most);

    /** Those of an owner or, for null, of anybody; the last changed first. */
    @Query("select p from StoredProposal p where :ownerId is null or p.ownerId = :ownerId"
            + " order by p.changedAt desc, p.id desc")
    List<StoredProposal> lastChanged(@Nullable Long ownerId, Limit most);

    /** The ids of all who own a proposal. */
    @Query("select distinct p.ownerId from StoredProposal p")
    List<Long> owners();
}
