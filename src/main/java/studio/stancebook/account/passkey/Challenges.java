package studio.stancebook.account.passkey;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.stereotype.Component;
import org.springframework.web.util.WebUtils;

/**
 * What browsers were asked to sign, for a few minutes and once each, found by a cookie: whoever signs in has no session yet,
 * and must not be able to fill the database with any. A machine has room for its own, and drives out nobody else's.
 */
@Component
class Challenges {

    static final String COOKIE = "passkey-challenge";
    static final Duration LENGTH = Duration.ofMinutes(5);

    /** Together at most 20,000 of some 500 bytes. */
    static final int PER_MACHINE = 40;

    private static final int MOST_MACHINES = 500;

    private final Clock clock;
    private final Cache<String, Map<String, Asked>> ofMachines = Caffeine.newBuilder()
            .maximumSize(MOST_MACHINES)
            .expireAfterWrite(LENGTH)
            .build();

    Challenges(Clock clock) {
        this.clock = clock;
    }

    private record Asked(PublicKeyCredentialRequestOptions what, Instant until) {}

    /** Keeps what a browser is asked. */
    void keep(PublicKeyCredentialRequestOptions options, HttpServletRequest request, HttpServletResponse response) {
        String key = Bytes.random().toBase64UrlString();
        Asked asked = new Asked(options, clock.instant().plus(LENGTH));
        ofMachines.asMap().compute(request.getRemoteAddr(), (machine, others) -> {
            Map<String, Asked> all = others == null ? new LastOnes() : new LastOnes(others);
            all.put(key, asked);
            return all;
        });
        response.addHeader(HttpHeaders.SET_COOKIE, cookie(key, LENGTH, request).toString());
    }

    /** What the browser was asked, which is forgotten with that; empty if it was nothing, or too long ago. */
    Optional<PublicKeyCredentialRequestOptions> take(HttpServletRequest request, HttpServletResponse response) {
        Cookie cookie = WebUtils.getCookie(request, COOKIE);
        if (cookie == null) {
            return Optional.empty();
        }
        response.addHeader(
                HttpHeaders.SET_COOKIE, cookie("", Duration.ZERO, request).toString());
        AtomicReference<@Nullable Asked> taken = new AtomicReference<>();
        ofMachines.asMap().computeIfPresent(request.getRemoteAddr(), (machine, all) -> {
            Map<String, Asked> left = new LastOnes(all);
            taken.set(left.remove(cookie.getValue()));
            return left;
        });
        return Optional.ofNullable(taken.get())
                .filter(asked -> clock.instant().isBefore(asked.until()))
                .map(Asked::what);
    }

    private static ResponseCookie cookie(String value, Duration age, HttpServletRequest request) {
        return ResponseCookie.from(COOKIE, value)
                .path("/")
                .maxAge(age)
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Lax")
                .build();
    }

    /** The last ones of a machine: one more drives out the oldest. */
    private static final class LastOnes extends LinkedHashMap<String, Asked> {

        LastOnes() {}

        LastOnes(Map<String, Asked> others) {
            super(others);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Asked> eldest) {
            return size() > PER_MACHINE;
        }
    }
}
