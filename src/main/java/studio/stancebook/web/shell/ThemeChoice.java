package studio.stancebook.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.edge.OwnAddress;
import studio.stancebook.problem.Malformed;

/** Keeps the theme somebody chose on their machine, in a cookie that names nobody. */
@Controller
class ThemeChoice {

    static final String COOKIE = "theme";

    private static final Duration KEPT = Duration.ofDays(400);

    @PostMapping("/theme")
    ResponseEntity<Void> choose(
            @RequestParam("theme") String theme,
            @RequestParam(name = "back", defaultValue = "/") String back,
            HttpServletRequest request) {
        Theme chosen = Theme.ofKey(theme)
                .orElseThrow(() -> Malformed.ofField(
                        "theme", "\"" + theme + "\" is not a theme: accepted are " + Theme.keys() + "."));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(
                        HttpHeaders.SET_COOKIE,
                        cookie(chosen, request.isSecure()).toString())
                .location(URI.create(OwnAddress.of(back)))
                .build();
    }

    private static ResponseCookie cookie(Theme theme, boolean secure) {
        return ResponseCookie.from(COOKIE, theme == Theme.SYSTEM ? "" : theme.key())
                .path("/")
                .httpOnly(true)
                .secure(secure)
                .sameSite("Lax")
                .maxAge(theme == Theme.SYSTEM ? Duration.ZERO : KEPT)
                .build();
    }
}
