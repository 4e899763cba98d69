package studio.stancebook.account.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.security.SecurityRequirement;
import java.net.URI;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.IssuedToken;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.account.internal.TokenEntry;
import studio.stancebook.account.internal.TokenService;

/** A person's own tokens. */
@RestController
@RequestMapping("/api/v1/tokens")
class TokenCalls {

    private final TokenService tokenService;

    TokenCalls(TokenService tokenService) {
        this.tokenService = tokenService;
    }

    /** @param token the secret, shown this once */
    record Issued(String token, long id, String scope, Instant expiresAt) {

        static Issued of(IssuedToken made) {
            TokenEntry entry = made.entry();
            return new Issued(made.secret(), entry.id(), entry.scope().key(), entry.expiresAt());
        }
    }

    /**
     * @param scope the key of a scope: {@code read} or {@code write}
     * @param lastUsedAt to the minute; absent when it was never used
     * @param expiresAt from when on it is refused
     */
    record TokenJson(
            long id,
            String name,
            String scope,
            Instant createdAt,
            @Nullable Instant lastUsedAt,
            Instant expiresAt) {

        static TokenJson of(TokenEntry entry) {
            return new TokenJson(
                    entry.id(),
                    entry.name(),
                    entry.scope().key(),
                    entry.createdAt(),
                    entry.lastUsedAt(),
                    entry.expiresAt());
        }
    }

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(
            summary = "Make a token",
            description = "A token with the scope read is refused with 403 by every call but GET and those that only"
                    + " calculate. Once it has expired it is refused with 401.",
            security = @SecurityRequirement(name = "password"))
    ResponseEntity<Issued> issue(@AuthenticationPrincipal SignedIn who, @RequestBody NewToken wish) {
        IssuedToken token = tokenService.issue(who, wish);
        return ResponseEntity.created(URI.create("/api/v1/tokens/" + token.id()))
                .body(Issued.of(token));
    }

    @GetMapping
    @Operation(summary = "Your tokens, without their secrets, expired ones included")
    Page<TokenJson> list(@AuthenticationPrincipal SignedIn who, Pageable page) {
        return tokenService.list(who, page).map(TokenJson::of);
    }

    @DeleteMapping("/{id}")
    @Operation(summary = "Revoke one of your tokens")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void revoke(@AuthenticationPrincipal SignedIn who, @PathVariable long id) {
        tokenService.revoke(who, id);
    }
}
