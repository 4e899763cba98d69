package studio.stancebook.proposal;

import studio.stancebook.band.Assessment;

/**
 * A proposal among others of its segment.
 *
 * @param assessment of its newest revision, as it was judged
 */
public record JudgedProposal(long id, String name, Assessment assessment) {}
