package studio.stancebook.exchange.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Turns a form with too large a file away before the forgery check, which reads the form and would find no token in one
 * that was cut off: the sender would be told of a forgery instead of the size.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 100)
class OversizeUpload extends OncePerRequestFilter {

    private final DataSize largest;

    OversizeUpload(@Value("${spring.servlet.multipart.max-request-size}") DataSize largest) {
        this.largest = largest;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return !"POST".equals(request.getMethod())
                || !path.equals("/bring-in")
                || request.getContentLengthLong() <= largest.toBytes();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.sendRedirect(request.getContextPath() + "/bring-in?too-large");
    }
}
