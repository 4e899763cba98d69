package studio.stancebook.account.session;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Tells the sessions when a request begins and ends: Spring Session asks for the session of a request again at its end. */
final class RequestBounds extends OncePerRequestFilter {

    private final ThrottledSessionRepository<?> sessions;

    RequestBounds(ThrottledSessionRepository<?> sessions) {
        this.sessions = sessions;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        sessions.requestBegins();
        try {
            chain.doFilter(request, response);
        } finally {
            sessions.requestEnds();
        }
    }
}
