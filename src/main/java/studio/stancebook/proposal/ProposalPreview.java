package studio.stancebook.proposal;

import studio.stancebook.band.Assessment;
import studio.stancebook.dimension.DimensionSet;

/**
 * What a revision would be if it were saved now.
 *
 * @param proposal as it is kept
 * @param dimensions of the revision that there is not yet
 * @param assessment by the bands of now, without single moves
 */
public record ProposalPreview(ProposalView proposal, DimensionSet dimensions, Assessment assessment) {}
