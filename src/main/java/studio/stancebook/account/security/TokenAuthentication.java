package studio.stancebook.account.security;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.TokenScope;

/** A token as sent, or the person it turned out to stand for. */
final class TokenAuthentication extends AbstractAuthenticationToken {

    private final @Nullable String secret;
    private final @Nullable SignedIn owner;

    private TokenAuthentication(String secret) {
        super(List.of());
        this.secret = secret;
        this.owner = null;
    }

    private TokenAuthentication(SignedIn owner, TokenScope scope) {
        super(List.of(new SimpleGrantedAuthority(scope.authority())));
        this.secret = null;
        this.owner = owner;
        super.setAuthenticated(true);
    }

    static TokenAuthentication claimed(String secret) {
        return new TokenAuthentication(secret);
    }

    static TokenAuthentication proven(SignedIn owner, TokenScope scope) {
        return new TokenAuthentication(owner, scope);
    }

    @Override
    public @Nullable String getCredentials() {
        return secret;
    }

    @Override
    public Object getPrincipal() {
        return owner == null ? "token" : owner;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TokenAuthentication that
                && super.equals(that)
                && Objects.equals(secret, that.secret)
                && Objects.equals(owner, that.owner);
    }

    @Override
    public int hashCode() {
        return Objects.hash(super.hashCode(), secret, owner);
    }
}
