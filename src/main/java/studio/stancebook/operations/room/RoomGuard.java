package studio.stancebook.operations.room;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;
import studio.stancebook.operations.OutOfService;

/** Refuses to record anything while room is short, as long as there still is enough for reading to go on. */
final class RoomGuard extends OncePerRequestFilter {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

    /** Posts that record nothing, and those that one needs in order to read. */
    private static final Set<String> OPEN = Set.of(
            "/sign-in",
            "/sign-out",
            "/theme",
            "/units",
            "/api/v1/backups",
            "/studio/backup",
            "/api/v1/geometry/angles");

    private final Room room;
    private final HandlerExceptionResolver rendering;

    RoomGuard(Room room, HandlerExceptionResolver rendering) {
        this.room = room;
        this.rendering = rendering;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return READING.contains(request.getMethod()) || OPEN.contains(path);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (room.isShort()) {
            rendering.resolveException(request, response, null, OutOfService.becauseRoomIsShort());
        } else {
            chain.doFilter(request, response);
        }
    }
}
