package studio.stancebook.account.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.savedrequest.CookieRequestCache;
import org.springframework.security.web.savedrequest.SavedRequest;
import org.springframework.security.web.util.matcher.AndRequestMatcher;
import org.springframework.security.web.util.matcher.NegatedRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * Remembers the page that somebody wanted before signing in: whole pages only, if their address fits a cookie, which is
 * where it is kept, so that a stranger who only looks makes no session.
 */
final class SavedRequests extends CookieRequestCache {

    private static final int LONGEST = 1_000;

    SavedRequests(RequestMatcher partOfPage) {
        setCookieCustomizer(cookie -> cookie.setAttribute("SameSite", "Lax"));
        setRequestMatcher(new AndRequestMatcher(
                request -> "GET".equals(request.getMethod()),
                request -> String.valueOf(request.getHeader("Accept")).contains("text/html"),
                request -> request.getRequestURI().length() + lengthOf(request.getQueryString()) <= LONGEST,
                new NegatedRequestMatcher(partOfPage)));
    }

    /**
     * Never: the cookie has the address alone, and a request answered as the one remembered would be without its headers,
     * and without its fields if it is a form.
     */
    @Override
    public @Nullable HttpServletRequest getMatchingRequest(HttpServletRequest request, HttpServletResponse response) {
        return null;
    }

    /** None if the cookie has something else in it than was put there. */
    @Override
    public @Nullable SavedRequest getRequest(HttpServletRequest request, HttpServletResponse response) {
        try {
            return super.getRequest(request, response);
        } catch (IllegalArgumentException notOurs) {
            return null;
        }
    }

    private static int lengthOf(@Nullable String text) {
        return text == null ? 0 : text.length();
    }
}
