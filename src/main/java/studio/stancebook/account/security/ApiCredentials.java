package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.AuthenticationConverter;
import org.springframework.security.web.authentication.www.BasicAuthenticationConverter;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * Reads the Authorization header of an API request: Basic (RFC 7617) to make a token and nowhere else, Bearer (RFC 6750)
 * for everything else.
 */
final class ApiCredentials implements AuthenticationConverter {

    static final RequestMatcher MAKES_A_TOKEN = pathPattern(HttpMethod.POST, "/api/v1/tokens");

    private static final String BEARER = "bearer ";
    private static final String BASIC = "basic ";

    private final BasicAuthenticationConverter basic = new BasicAuthenticationConverter();

    @Override
    public @Nullable Authentication convert(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        if (header == null) {
            return null;
        }
        boolean makesToken = MAKES_A_TOKEN.matches(request);
        String scheme = header.toLowerCase(Locale.ROOT);
        if (makesToken && scheme.startsWith(BASIC)) {
            return basic.convert(request);
        }
        if (!makesToken && scheme.startsWith(BEARER)) {
            return TokenAuthentication.claimed(header.substring(BEARER.length()).strip());
        }
        throw new BadCredentialsException(
                makesToken
                        ? "A token is made with Authorization: Basic, that is with address and password."
                        : "This call takes Authorization: Bearer with a token from POST /api/v1/tokens.");
    }
}
