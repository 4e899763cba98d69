package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.http.HttpMethod;
import org.springframework.security.authorization.AllRequiredFactorsAuthorizationManager;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.DelegatingMissingAuthorityAccessDeniedHandler;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * What takes more than being signed in: a password given, or a passkey used, within the last ten minutes, so that a browser
 * left open is not enough. A page with such a form asks before it shows the form, so that nothing typed is lost.
 *
 * <p>Source: OWASP ASVS 5.0, 7.5, for asking at all; ten minutes are our choice.
 */
final class FreshProof {

    static final Duration VALID = Duration.ofMinutes(10);

    /**
     * @param page where the form for the requests is; {@code {id}} stands for that of the request
     */
    private record Guarded(String page, RequestMatcher requests) {}

    private static final List<Guarded> OWN = List.of(
            new Guarded("/account", pathPattern(HttpMethod.POST, "/account/sign-ins/**")),
            new Guarded("/account/tokens/new", pathPattern("/account/tokens/new")),
            new Guarded("/account/tokens/new", pathPattern(HttpMethod.POST, "/account/tokens")),
            new Guarded("/account", pathPattern(HttpMethod.POST, "/account/passkeys/{id}/remove")),
            new Guarded("/account/passkeys/new", pathPattern("/account/passkeys/**")));

    private static final List<Guarded> OF_PEOPLE = List.of(
            new Guarded("/studio/people/new", pathPattern("/studio/people/new")),
            new Guarded("/studio/people/new", pathPattern(HttpMethod.POST, "/studio/people")),
            new Guarded("/studio/people/{id}", pathPattern("/studio/people/{id}/**")));

    private static final List<Guarded> OF_BACKUPS =
            List.of(new Guarded("/studio/backup", pathPattern("/studio/backup")));

    /** Requests about the own account that take a fresh proof. */
    static final RequestMatcher FOR_OWN_ACCOUNT = anyOf(OWN);

    /** Requests about people that take a fresh proof. */
    static final RequestMatcher FOR_PEOPLE = anyOf(OF_PEOPLE);

    /** Requests about backups that take a fresh proof. */
    static final RequestMatcher FOR_BACKUPS = anyOf(OF_BACKUPS);

    private FreshProof() {}

    private static RequestMatcher anyOf(List<Guarded> guarded) {
        return new OrRequestMatcher(guarded.stream().map(Guarded::requests).toList());
    }

    /** Lets in whoever gave a proof of either kind lately. */
    static <T> AuthorizationManager<T> given(Clock clock) {
        return AllRequiredFactorsAuthorizationManager.anyOf(
                lately(FactorGrantedAuthority.PASSWORD_AUTHORITY, clock),
                lately(FactorGrantedAuthority.WEBAUTHN_AUTHORITY, clock));
    }

    private static <T> AllRequiredFactorsAuthorizationManager<T> lately(String factor, Clock clock) {
        AllRequiredFactorsAuthorizationManager<T> manager = AllRequiredFactorsAuthorizationManager.<T>builder()
                .requireFactor(required -> required.authority(factor).validDuration(VALID))
                .build();
        manager.setClock(clock);
        return manager;
    }

    /** Asks for a proof where nothing else is missing, and does what is given where something else is. */
    static AccessDeniedHandler askFor(AccessDeniedHandler otherwise) {
        DelegatingMissingAuthorityAccessDeniedHandler handler = DelegatingMissingAuthorityAccessDeniedHandler.builder()
                .addEntryPointFor(
                        (request, response, missing) -> ask(request, response),
                        FactorGrantedAuthority.PASSWORD_AUTHORITY)
                .build();
        handler.setDefaultAccessDeniedHandler(otherwise);
        return handler;
    }

    private static void ask(HttpServletRequest request, HttpServletResponse response) throws IOException {
        response.sendRedirect(UriComponentsBuilder.fromPath(request.getContextPath() + "/account/confirm")
                .queryParam("back", "{page}")
                .encode()
                .buildAndExpand(pageOf(request))
                .toUriString());
    }

    private static String pageOf(HttpServletRequest request) {
        Guarded asked = Stream.of(OWN, OF_PEOPLE, OF_BACKUPS)
                .flatMap(List::stream)
                .filter(guarded -> guarded.requests().matches(request))
                .findFirst()
                .orElseThrow();
        return UriComponentsBuilder.fromPath(asked.page())
                .encode()
                .buildAndExpand(asked.requests().matcher(request).getVariables())
                .toUriString();
    }
}
