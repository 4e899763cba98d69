package studio.stancebook.web.idempotency;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;
import org.springframework.web.util.ContentCachingResponseWrapper;
import studio.stancebook.access.SignedIn;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Malformed;
import studio.stancebook.problem.Refusal;

/**
 * Carries out a post with an Idempotency-Key once, and answers the same post sent again with the first answer.
 *
 * <p>Refused posts (4xx) changed nothing and are not kept. A failure (5xx) is kept, because nobody can say what it left
 * behind.
 */
final class IdempotencyFilter extends OncePerRequestFilter {

    static final String KEY = "Idempotency-Key";
    static final String REPLAYED = "Idempotency-Replayed";

    /** Posts whose answer must be kept nowhere, or is too long to be. */
    private static final Set<String> NOT_KEPT = Set.of("/api/v1/tokens", "/api/v1/backups");

    private static final Pattern ACCEPTED_KEY = Pattern.compile("[\\x21-\\x7e]{1,200}");

    private final StoredResponses answers;
    private final HandlerExceptionResolver rendering;

    IdempotencyFilter(StoredResponses answers, HandlerExceptionResolver rendering) {
        this.answers = answers;
        this.rendering = rendering;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return !"POST".equals(request.getMethod())
                || request.getHeader(KEY) == null
                || !path.startsWith("/api/v1/")
                || NOT_KEPT.contains(path);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication == null || !(authentication.getPrincipal() instanceof SignedIn who)) {
            chain.doFilter(request, response);
            return;
        }
        try {
            once(who.personId(), request, response, chain);
        } catch (Refusal refusal) {
            rendering.resolveException(request, response, null, refusal);
        }
    }

    private void once(long personId, HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String key = checkedKey(request);
        RequestWithBody whole = RequestWithBody.read(request);
        if (answers.claim(personId, key, whole.hash())) {
            carryOut(personId, key, whole, response, chain);
        } else {
            replay(earlier(personId, key, whole.hash()), response);
        }
    }

    private static String checkedKey(HttpServletRequest request) {
        String key = request.getHeader(KEY);
        if (!ACCEPTED_KEY.matcher(key).matches()) {
            throw Malformed.ofField(KEY, KEY + " takes 1 to 200 visible ASCII characters without spaces.");
        }
        String type = request.getContentType();
        if (type != null && !isJson(type)) {
            throw Malformed.ofField(KEY, KEY + " goes with JSON bodies only; send this post without it.");
        }
        return key;
    }

    private static boolean isJson(String contentType) {
        try {
            return MediaType.APPLICATION_JSON.isCompatibleWith(MediaType.parseMediaType(contentType));
        } catch (org.springframework.http.InvalidMediaTypeException e) {
            return false;
        }
    }

    private StoredResponse earlier(long personId, String key, String hash) {
        StoredResponse answer = answers.find(personId, key)
                .orElseThrow(
                        () -> new Conflict("The first post with this " + KEY + " was just refused: send it again."));
        if (!answer.requestHash().equals(hash)) {
            throw Impossible.ofField(
                    KEY, "This " + KEY + " was used for another request: take a new key for a new request.");
        }
        if (answer.status() == null) {
            throw new Conflict("The first post with this " + KEY + " is still being worked on: ask again shortly.");
        }
        if (answer.body() == null) {
            throw new Conflict(
                    "The first post with this " + KEY + " was carried out; its answer was too long to keep.");
        }
        return answer;
    }

    private void carryOut(
            long personId, String key, HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        ContentCachingResponseWrapper recorder = new ContentCachingResponseWrapper(response);
        chain.doFilter(request, recorder);
        if (recorder.getStatus() >= 400 && recorder.getStatus() < 500) {
            answers.release(personId, key);
        } else {
            answers.keep(personId, key, recorded(recorder));
        }
        recorder.copyBodyToResponse();
    }

    private static StoredResponse recorded(ContentCachingResponseWrapper answer) {
        String body = new String(answer.getContentAsByteArray(), StandardCharsets.UTF_8);
        return new StoredResponse(
                "",
                answer.getStatus(),
                answer.getContentType(),
                answer.getHeader(HttpHeaders.LOCATION),
                answer.getHeader(HttpHeaders.ETAG),
                body.length() <= StoredResponses.LONGEST_BODY ? body : null);
    }

    private static void replay(StoredResponse answer, HttpServletResponse response) throws IOException {
        response.setStatus(Optional.ofNullable(answer.status()).orElseThrow());
        response.setHeader(REPLAYED, "true");
        setIfKept(response, HttpHeaders.CONTENT_TYPE, answer.contentType());
        setIfKept(response, HttpHeaders.LOCATION, answer.location());
        setIfKept(response, HttpHeaders.ETAG, answer.etag());
        byte[] body = Optional.ofNullable(answer.body()).orElse("").getBytes(StandardCharsets.UTF_8);
        response.setContentLength(body.length);
        response.getOutputStream().write(body);
    }

    private static void setIfKept(HttpServletResponse response, String header, @Nullable String value) {
        if (value != null) {
            response.setHeader(header, value);
        }
    }
}
