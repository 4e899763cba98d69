package studio.stancebook.web.board;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.stereotype.Component;
import org.springframework.web.util.WebUtils;

/**
 * When this browser was here before. A cookie keeps the time over sessions; within a session the time stays what it was at
 * its start, so that looking twice does not make news old.
 */
@Component
class LastVisit {

    private static final String COOKIE = "board-seen";
    private static final String BEFORE_THIS_SESSION = "boardSeenBefore";
    private static final Duration WITHOUT_COOKIE = Duration.ofDays(14);
    private static final Duration KEPT = Duration.ofDays(365);

    private final Clock clock;

    LastVisit(Clock clock) {
        this.clock = clock;
    }

    /** The visit before this session; two weeks ago for a browser that was never here. */
    Instant before(HttpServletRequest request, HttpServletResponse response) {
        HttpSession session = request.getSession();
        Object known = session.getAttribute(BEFORE_THIS_SESSION);
        response.addCookie(remember(request));
        if (known instanceof Instant before) {
            return before;
        }
        Instant before = fromCookie(request);
        session.setAttribute(BEFORE_THIS_SESSION, before);
        return before;
    }

    private Instant fromCookie(HttpServletRequest request) {
        Instant fallback = clock.instant().minus(WITHOUT_COOKIE);
        Cookie cookie = WebUtils.getCookie(request, COOKIE);
        if (cookie == null || !cookie.getValue().matches("\\d{1,15}")) {
            return fallback;
        }
        return Instant.ofEpochMilli(Long.parseLong(cookie.getValue()));
    }

    private Cookie remember(HttpServletRequest request) {
        Cookie cookie = new Cookie(COOKIE, Long.toString(clock.millis()));
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSecure(request.isSecure());
        cookie.setMaxAge((int) KEPT.toSeconds());
        cookie.setAttribute("SameSite", "Lax");
        return cookie;
    }
}
