package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpHeaders;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Refusal;

/** Hands refusals of the API's filter chain to whatever renders the refusals of its controllers, so that both look alike. */
@Component
class ApiRefusals implements AuthenticationEntryPoint, AccessDeniedHandler {

    private static final String READ_TOKEN =
            "This token has the scope read, and this call takes one with the scope write.";

    private final HandlerExceptionResolver rendering;

    ApiRefusals(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver rendering) {
        this.rendering = rendering;
    }

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException exception)
            throws IOException {
        if (exception.getCause() instanceof Refusal refusal) {
            render(request, response, refusal, refusal.type().status());
            return;
        }
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, challenge(request));
        render(request, response, exception, HttpServletResponse.SC_UNAUTHORIZED);
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException exception)
            throws IOException {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        boolean scope = ReadOnly.WRITES.matches(request) && ReadOnly.byReadToken(who);
        RuntimeException reason = scope ? new Forbidden(READ_TOKEN) : exception;
        render(request, response, reason, HttpServletResponse.SC_FORBIDDEN);
    }

    private static String challenge(HttpServletRequest request) {
        if (ApiCredentials.MAKES_A_TOKEN.matches(request)) {
            return "Basic realm=\"stancebook\", charset=\"UTF-8\"";
        }
        boolean tried = request.getHeader(HttpHeaders.AUTHORIZATION) != null;
        return "Bearer realm=\"stancebook\"" + (tried ? ", error=\"invalid_token\"" : "");
    }

    private void render(
            HttpServletRequest request, HttpServletResponse response, RuntimeException exception, int status)
            throws IOException {
        if (rendering.resolveException(request, response, null, exception) == null) {
            response.sendError(status);
        }
    }
}
