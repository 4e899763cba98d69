package studio.stancebook.web.shell;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.ResponseCookie;
import org.springframework.web.util.WebUtils;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.ShownUnits;

/** The units that somebody reads, kept on their machine in a cookie that names nobody: {@code in-vertical}. */
final class UnitsCookie {

    private static final String NAME = "units";
    private static final Duration KEPT = Duration.ofDays(400);

    private UnitsCookie() {}

    /** Those of a request; mm and from the horizontal where it carries none, or none that there are. */
    static ShownUnits of(HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, NAME))
                .map(Cookie::getValue)
                .flatMap(UnitsCookie::read)
                .orElse(ShownUnits.KEPT);
    }

    private static Optional<ShownUnits> read(String value) {
        String[] parts = value.split("-", 2);
        return parts.length < 2
                ? Optional.empty()
                : LengthUnit.ofSymbol(parts[0])
                        .flatMap(
                                length -> AngleReference.ofKey(parts[1]).map(angles -> new ShownUnits(length, angles)));
    }

    static ResponseCookie of(ShownUnits units, boolean secure) {
        boolean kept = !units.equals(ShownUnits.KEPT);
        return ResponseCookie.from(
                        NAME,
                        kept ? units.length().symbol() + "-" + units.angles().key() : "")
                .path("/")
                .httpOnly(true)
                .secure(secure)
                .sameSite("Lax")
                .maxAge(kept ? KEPT : Duration.ZERO)
                .build();
    }
}
