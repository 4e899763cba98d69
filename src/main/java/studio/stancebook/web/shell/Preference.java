package studio.stancebook.web.shell;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.web.util.WebUtils;
import studio.stancebook.edge.OwnAddress;

/** How somebody likes pages, kept on their machine in a cookie that names nobody. */
final class Preference {

    private static final Duration KEPT = Duration.ofDays(400);

    private Preference() {}

    /** What was chosen; empty where nothing was. */
    static Optional<String> chosen(String name, HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, name)).map(Cookie::getValue);
    }

    /**
     * Keeps a choice and goes back to the page it was made on.
     *
     * @param value empty for what holds where nothing was chosen
     * @param back an address of this server; the board for any other
     */
    static ResponseEntity<Void> keep(String name, String value, HttpServletRequest request, String back) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(
                        HttpHeaders.SET_COOKIE,
                        cookie(name, value, request.isSecure()).toString())
                .location(URI.create(OwnAddress.of(back)))
                .build();
    }

    private static ResponseCookie cookie(String name, String value, boolean secure) {
        return ResponseCookie.from(name, value)
                .path("/")
                .httpOnly(true)
                .secure(secure)
                .sameSite("Lax")
                .maxAge(value.isEmpty() ? Duration.ZERO : KEPT)
                .build();
    }
}
