package studio.stancebook.account.internal;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * A token to be made, as typed: nothing here has been checked.
 *
 * @param name what it is for
 * @param scope the key of a scope; {@code write} if there is none
 * @param expiresInDays after how many days it ends; 90 if there is none
 */
public record NewToken(
        @Schema(description = "What the token is for", maxLength = 100) @Nullable
        String name,

        @Schema(
                description = "What it may do of what its owner may",
                allowableValues = {"read", "write"},
                defaultValue = "write")
        @Nullable
        String scope,

        @Schema(description = "After how many days it ends", minimum = "1", maximum = "366", defaultValue = "90")
        @Nullable
        Integer expiresInDays) {

    /** A token that may do everything its owner may, and ends when tokens usually end. */
    public static NewToken named(@Nullable String name) {
        return new NewToken(name, null, null);
    }
}
