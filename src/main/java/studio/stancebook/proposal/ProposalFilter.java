package studio.stancebook.proposal;

import org.jspecify.annotations.Nullable;

/**
 * Which proposals are looked for; what is null does not limit.
 *
 * @param segment the key of a segment
 * @param ownerId the id of a person
 */
public record ProposalFilter(
        @Nullable String segment,
        @Nullable Stage stage,
        @Nullable Long ownerId) {

    /** All that the person may see. */
    public static ProposalFilter all() {
        return new ProposalFilter(null, null, null);
    }
}
