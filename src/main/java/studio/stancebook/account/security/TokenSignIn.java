package studio.stancebook.account.security;

import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.core.Authentication;
import org.springframework.stereotype.Component;
import studio.stancebook.account.internal.RecognisedToken;
import studio.stancebook.account.internal.TokenService;

/** Recognises a person by one of their tokens. */
@Component
class TokenSignIn implements AuthenticationProvider {

    private final TokenService tokens;

    TokenSignIn(TokenService tokens) {
        this.tokens = tokens;
    }

    @Override
    public Authentication authenticate(Authentication claim) {
        String secret = Objects.requireNonNull(((TokenAuthentication) claim).getCredentials());
        RecognisedToken token = tokens.recognise(secret)
                .orElseThrow(() -> new BadCredentialsException(
                        "This token is not accepted: it was mistyped or revoked, or its owner may no longer sign in."));
        if (token.expired()) {
            throw new BadCredentialsException("This token expired at "
                    + token.expiresAt().truncatedTo(ChronoUnit.SECONDS) + ": make another by POST /api/v1/tokens.");
        }
        return TokenAuthentication.proven(token.owner(), token.scope());
    }

    @Override
    public boolean supports(Class<?> kind) {
        return TokenAuthentication.class.isAssignableFrom(kind);
    }
}
