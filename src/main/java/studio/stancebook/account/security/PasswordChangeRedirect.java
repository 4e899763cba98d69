package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Stream;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** Leads whoever has a password that somebody else set to the page where they choose their own, wherever they wanted to go. */
final class PasswordChangeRedirect {

    private static final String PAGE = "/account/password";

    private static final RequestMatcher STAYS_OPEN =
            new OrRequestMatcher(Stream.concat(Stream.of(PAGE, "/sign-out"), Arrays.stream(PageSecurity.OPEN_TO_ALL))
                    .<RequestMatcher>map(path -> pathPattern(path))
                    .toList());

    private PasswordChangeRedirect() {}

    /** Whether a request was answered by sending its sender there. */
    static boolean leads(HttpServletRequest request, HttpServletResponse response) throws IOException {
        if (STAYS_OPEN.matches(request)) {
            return false;
        }
        String page = request.getContextPath() + PAGE;
        if (PageSecurity.PART_OF_PAGE.matches(request)) {
            response.setStatus(HttpServletResponse.SC_FORBIDDEN);
            response.setHeader("HX-Redirect", page);
        } else {
            response.sendRedirect(page);
        }
        return true;
    }
}
