package studio.stancebook.proposal;

import org.jspecify.annotations.Nullable;

/**
 * Which proposals are looked for; what is null does not limit.
 *
 * @param text part of the name, in any case; empty for all
 * @param segment the key of a segment
 * @param ownerId the id of a person
 */
public record ProposalFilter(
        String text,
        @Nullable String segment,
        @Nullable Stage stage,
        @Nullable Long ownerId) {

    /** All that the person may see. */
    public static ProposalFilter all() {
        return new ProposalFilter("", null, null, null);
    }

    /** Those that the person may see whose name has this in it. */
    public static ProposalFilter named(String text) {
        return new ProposalFilter(text, null, null, null);
    }
}
