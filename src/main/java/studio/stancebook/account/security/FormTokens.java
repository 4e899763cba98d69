package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.security.web.csrf.CsrfTokenRepository;

/**
 * The CSRF tokens of forms, in a cookie that scripts cannot read, so that a stranger who only looks at a form makes no
 * session. Over TLS its name keeps neighbouring hosts from setting one that they know.
 */
final class FormTokens implements CsrfTokenRepository {

    private final CsrfTokenRepository plain = named("form-token");
    private final CsrfTokenRepository overTls = named("__Host-form-token");

    private static CsrfTokenRepository named(String name) {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieName(name);
        tokens.setCookiePath("/");
        tokens.setCookieCustomizer(cookie -> cookie.sameSite("Lax"));
        return tokens;
    }

    private CsrfTokenRepository of(HttpServletRequest request) {
        return request.isSecure() ? overTls : plain;
    }

    @Override
    public CsrfToken generateToken(HttpServletRequest request) {
        return of(request).generateToken(request);
    }

    @Override
    public void saveToken(@Nullable CsrfToken token, HttpServletRequest request, HttpServletResponse response) {
        of(request).saveToken(token, request, response);
    }

    @Override
    public @Nullable CsrfToken loadToken(HttpServletRequest request) {
        return of(request).loadToken(request);
    }
}
