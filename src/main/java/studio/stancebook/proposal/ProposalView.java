package studio.stancebook.proposal;

import java.time.Instant;
import studio.stancebook.catalogue.SegmentName;

/**
 * A proposal with its newest revision.
 *
 * @param version counts its changes and revisions
 * @param ownerName the owner's name now
 */
public record ProposalView(
        long id,
        long version,
        String name,
        SegmentName segment,
        Stage stage,
        long ownerId,
        String ownerName,
        RevisionView newest,
        Instant createdAt,
        Instant changedAt,
        String changedBy) {}
