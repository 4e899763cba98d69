package studio.stancebook.account.session;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;
import org.springframework.stereotype.Component;

/**
 * The cookie of a session: over TLS under a name that a browser takes and sends back over TLS only, from and to this very
 * host. A session that began over plain HTTP is not looked for under that name, nor the other way round; nor is one taken
 * under the other name, which {@link SignIns#isOver} sees to.
 *
 * <p>Source: RFC 6265bis, 4.1.3.2, on {@code __Host-}.
 */
@Component
class SessionCookie implements CookieSerializer {

    static final String PLAIN = "session";
    static final String OVER_TLS = "__Host-session";

    private final CookieSerializer plain = named(PLAIN, false);
    private final CookieSerializer overTls = named(OVER_TLS, true);

    private static CookieSerializer named(String name, boolean secure) {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName(name);
        cookie.setCookiePath("/");
        cookie.setUseSecureCookie(secure);
        cookie.setUseHttpOnlyCookie(true);
        cookie.setSameSite("Lax");
        return cookie;
    }

    private CookieSerializer of(HttpServletRequest request) {
        return request.isSecure() ? overTls : plain;
    }

    @Override
    public List<String> readCookieValues(HttpServletRequest request) {
        return of(request).readCookieValues(request);
    }

    @Override
    public void writeCookieValue(CookieValue value) {
        of(value.getRequest()).writeCookieValue(value);
    }
}
