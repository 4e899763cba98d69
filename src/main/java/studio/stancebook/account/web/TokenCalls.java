package studio.stancebook.account.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.security.SecurityRequirement;
import java.net.URI;
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
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.IssuedToken;
import studio.stancebook.account.internal.TokenDesk;
import studio.stancebook.account.internal.TokenEntry;

/** A person's own tokens. */
@RestController
@RequestMapping("/api/v1/tokens")
class TokenCalls {

    private final TokenDesk desk;

    TokenCalls(TokenDesk desk) {
        this.desk = desk;
    }

    /** @param name what the token is for */
    record Wish(@Nullable String name) {}

    /** @param token the secret, shown this once */
    record Issued(String token, long id) {}

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(summary = "Make a token", security = @SecurityRequirement(name = "password"))
    ResponseEntity<Issued> issue(@AuthenticationPrincipal SignedIn who, @RequestBody Wish wish) {
        IssuedToken token = desk.issue(who, wish.name());
        return ResponseEntity.created(URI.create("/api/v1/tokens/" + token.id()))
                .body(new Issued(token.secret(), token.id()));
    }

    @GetMapping
    @Operation(summary = "Your tokens, without their secrets")
    Page<TokenEntry> list(@AuthenticationPrincipal SignedIn who, Pageable page) {
        return desk.list(who, page);
    }

    @DeleteMapping("/{id}")
    @Operation(summary = "Revoke one of your tokens")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void revoke(@AuthenticationPrincipal SignedIn who, @PathVariable long id) {
        desk.revoke(who, id);
    }
}
