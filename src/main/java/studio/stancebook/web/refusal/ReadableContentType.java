package studio.stancebook.web.refusal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Refuses a body that is said to be of any type: the readers behind take that for a fault of the program. */
@Component
@Order(Ordered.LOWEST_PRECEDENCE - 30)
class ReadableContentType extends OncePerRequestFilter {

    private final HandlerExceptionResolver rendering;

    ReadableContentType(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver rendering) {
        this.rendering = rendering;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        MediaType type = read(request.getContentType());
        if (type != null && !type.isConcrete()) {
            rendering.resolveException(
                    request, response, null, new HttpMediaTypeNotSupportedException(type, List.of()));
            return;
        }
        chain.doFilter(request, response);
    }

    /** The type, or nothing if it is missing or garbage, which the readers know to refuse. */
    private static @Nullable MediaType read(@Nullable String text) {
        try {
            return text == null || text.isBlank() ? null : MediaType.parseMediaType(text);
        } catch (InvalidMediaTypeException e) {
            return null;
        }
    }
}
