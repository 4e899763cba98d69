package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import jakarta.servlet.http.Cookie;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.StaticMessageSource;
import org.springframework.data.domain.Sort;
import org.springframework.mock.web.MockHttpServletRequest;

class ShellTest {

    private final MockHttpServletRequest request = new MockHttpServletRequest("GET", "/catalogue");
    private final Shell shell = new Shell(
            new ShellSettings("Marsh Lane Studio"),
            request,
            new StaticMessageSource(),
            Clock.fixed(Instant.parse("2026-10-12T09:00:00Z"), ZoneOffset.UTC));

    @Test
    void changesOneParameterAndKeepsTheOthersAsTheyWereSent() {
        request.setQueryString("q=dunlin%20%26%20tern&page=2");
        assertEquals("/catalogue?q=dunlin%20%26%20tern&page=3", shell.with("page", 3));
    }

    @Test
    void sortsAscendingFirstAndStartsOverAtTheFirstPage() {
        request.setQueryString("q=dunlin&page=2&sort=name,asc");
        assertEquals("/catalogue?q=dunlin&sort=year,asc", shell.sortedBy(Sort.by("name"), "year"));
    }

    @Test
    void turnsTheOrderOfTheSortedColumnRound() {
        assertEquals("/catalogue?sort=name,desc", shell.sortedBy(Sort.by("name"), "name"));
        assertEquals("/catalogue?sort=name,asc", shell.sortedBy(Sort.by("name").descending(), "name"));
    }

    @Test
    void tellsHowAColumnIsSorted() {
        Sort sort = Sort.by(Sort.Order.desc("name"));
        assertEquals("descending", shell.sorted(sort, "name"));
        assertNull(shell.sorted(sort, "year"));
        assertNull(shell.sorted(null, "name"));
    }

    @Test
    void describesAFieldByWhatThereIs() {
        assertNull(shell.described("a", null, null));
        assertEquals("f-a-hint", shell.described("a", "hint", null));
        assertEquals("f-a-unit f-a-error", shell.described("a", "mm", null, "error"));
    }

    @Test
    void followsTheSystemUnlessTheCookieHoldsATheme() {
        assertNull(shell.theme());
        assertEquals("system", shell.themeChoice());
        request.setCookies(new Cookie("theme", "dark"));
        assertEquals("dark", shell.theme());
        request.setCookies(new Cookie("theme", "\"><script>"));
        assertNull(shell.theme());
    }

    @Test
    void comesBackOnlyToWhatCanBeAskedForAgain() {
        request.setQueryString("page=1");
        assertEquals("/catalogue?page=1", shell.address());
        request.setMethod("POST");
        assertEquals("/", shell.address());
    }

    @Test
    void datesTheSheetAsTheStudioReadsIt() {
        assertEquals("12 October 2026", shell.issue());
    }
}
