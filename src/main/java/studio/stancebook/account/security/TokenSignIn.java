package studio.stancebook.account.security;

import java.util.Objects;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.core.Authentication;
import org.springframework.stereotype.Component;
import studio.stancebook.account.internal.TokenDesk;

/** Recognises a person by one of their tokens. */
@Component
class TokenSignIn implements AuthenticationProvider {

    private final TokenDesk tokens;

    TokenSignIn(TokenDesk tokens) {
        this.tokens = tokens;
    }

    @Override
    public Authentication authenticate(Authentication claim) {
        String secret = Objects.requireNonNull(((TokenAuthentication) claim).getCredentials());
        return tokens.recognise(secret)
                .map(TokenAuthentication::proven)
                .orElseThrow(() -> new BadCredentialsException(
                        "This token is not accepted: it was mistyped or revoked, or its owner may no longer sign in."));
    }

    @Override
    public boolean supports(Class<?> kind) {
        return TokenAuthentication.class.isAssignableFrom(kind);
    }
}
