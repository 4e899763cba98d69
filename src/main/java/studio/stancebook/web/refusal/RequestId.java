package studio.stancebook.web.refusal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.security.SecureRandom;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Gives every request a name, which its answer carries and every line of the log that it causes. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class RequestId extends OncePerRequestFilter {

    private static final String HEADER = "X-Request-Id";
    private static final String ATTRIBUTE = RequestId.class.getName();
    private static final String LOGGED_AS = "requestId";
    private static final int BYTES = 8;
    private static final SecureRandom RANDOM = new SecureRandom();

    /** The id of a request, absent only if the request never came through the filter. */
    static @Nullable String of(HttpServletRequest request) {
        return (String) request.getAttribute(ATTRIBUTE);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String id = next();
        request.setAttribute(ATTRIBUTE, id);
        response.setHeader(HEADER, id);
        MDC.put(LOGGED_AS, id);
        try {
            chain.doFilter(request, response);
        } finally {
            MDC.remove(LOGGED_AS);
        }
    }

    private static String next() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
