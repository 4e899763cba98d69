package studio.stancebook.catalogue;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A question about a package.
 *
 * @param valueKey the dimension or measure it is about; null when it is about the whole
 * @param question what has to be looked at
 * @param settlement how a person answered it; null while it is open
 */
public record PackageIssue(
        long id,
        IssueCause cause,
        @Nullable String valueKey,
        String question,
        Instant raisedAt,
        @Nullable Settlement settlement) {

    /** True until a person has answered. */
    public boolean open() {
        return settlement == null;
    }

    /**
     * The answer to a query.
     *
     * @param answer what was found, in words; empty only where it was settled before notes were needed
     * @param by the name that who settled it has now
     * @param at when
     */
    public record Settlement(String answer, String by, Instant at) {}
}
