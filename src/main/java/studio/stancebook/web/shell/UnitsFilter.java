package studio.stancebook.web.shell;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import studio.stancebook.quantity.ShownUnits;

/** Writes pages, and what is downloaded from them, in the units of who asks; programs are answered in mm always. */
@Component
class UnitsFilter extends OncePerRequestFilter {

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return path.startsWith("/api/") || path.startsWith("/assets/") || path.startsWith("/webjars/");
    }

    /** A refusal is a page as well. */
    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        UnitsChoice.of(request).use();
        try {
            chain.doFilter(request, response);
        } finally {
            ShownUnits.reset();
        }
    }
}
