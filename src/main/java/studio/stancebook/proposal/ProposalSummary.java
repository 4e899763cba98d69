package studio.stancebook.proposal;

import java.time.Instant;
import studio.stancebook.catalogue.SegmentName;

/**
 * A proposal in a list.
 *
 * @param ownerName the owner's name now
 * @param revision the number of the newest revision
 * @param judged how many measures of it were held against a band
 * @param unscaled whether the newest revision is a sketch without dimension
 */
public record ProposalSummary(
        long id,
        String name,
        SegmentName segment,
        Stage stage,
        long ownerId,
        String ownerName,
        int revision,
        int judged,
        int outside,
        int tooClose,
        boolean unscaled,
        Instant changedAt,
        String changedBy) {}
