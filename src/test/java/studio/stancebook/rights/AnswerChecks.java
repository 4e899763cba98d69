package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpHeaders;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What holds for every answer of the server, whoever asked for whatever. */
public final class AnswerChecks {

    private static final Map<String, String> ALWAYS = Map.of(
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "same-origin",
            "Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin");

    private static final String PAGES =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; "
                    + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final String API = "default-src 'none'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

    /** Files that say nothing of the studio, and may be kept. */
    private static final List<String> PUBLIC_FILES = List.of("/assets/", "/webjars/", "/favicon.ico", "/swagger-ui");

    /** Scripts without address, styles and handlers within the page, content from elsewhere. */
    private static final Pattern FORBIDDEN_IN_PAGES = Pattern.compile(
            "<script(?![^>]*\\ssrc=)|<style|\\sstyle=|\\son[a-z]+=|(src|href|action)=\"(https?:|//|javascript:|data:)",
            Pattern.CASE_INSENSITIVE);

    /** A type, and for text how its letters are written: OWASP ASVS 5.0.0, 4.1.1. */
    private static final Pattern TYPE =
            Pattern.compile("text/[a-z]+;.*charset=utf-8|(?!text/)[a-z]+/.+", Pattern.CASE_INSENSITIVE);

    /** What would tell of the inside: stack traces, classes, statements. */
    private static final Pattern INSIDE = Pattern.compile(
            "\\bat [a-z]+(\\.[a-z0-9]+)+\\.[A-Z]|\\bjava\\.[a-z]+\\.|\\bjakarta\\.|org\\.springframework|org\\.hibernate"
                    + "|org\\.h2\\.|org\\.postgresql|tools\\.jackson|studio\\.stancebook|Exception\\b|JdbcSQL"
                    + "|\\bSELECT .{1,200} FROM |\\bINSERT INTO |\\bUPDATE [a-z_]+ SET |\\bDELETE FROM |Apache Tomcat");

    /** A cookie without a value, which has nothing to keep from other sites. */
    private static final Pattern TAKEN_AWAY = Pattern.compile("[^=;]+=;");

    private AnswerChecks() {}

    static void check(String what, Route route, HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(what).isLessThan(500);
        checkHeaders(what, route.path(), answer.headers());
        if (isPage(answer) && !route.path().startsWith("/swagger-ui")) {
            assertThat(FORBIDDEN_IN_PAGES
                            .matcher(answer.body())
                            .results()
                            .map(found -> found.group())
                            .toList())
                    .as(what)
                    .isEmpty();
        }
        if (!answer.body().isEmpty()) {
            assertThat(answer.headers().firstValue("Content-Type").orElse("none"))
                    .as(what)
                    .matches(TYPE);
        }
        if (answer.statusCode() >= 400) {
            assertThat(inside(answer.body())).as(what).isEmpty();
        }
    }

    /** What an answer lets out that is nobody's business. */
    public static List<String> inside(String body) {
        return INSIDE.matcher(body).results().map(found -> found.group()).toList();
    }

    static boolean isPage(HttpResponse<?> answer) {
        return answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html");
    }

    private static void checkHeaders(String what, String path, HttpHeaders headers) {
        ALWAYS.forEach((name, value) ->
                assertThat(headers.allValues(name)).as(what + ": " + name).containsExactly(value));
        if (!path.startsWith("/swagger-ui")) {
            assertThat(headers.allValues("Content-Security-Policy"))
                    .as(what)
                    .containsExactly(path.startsWith("/api/") ? API : PAGES);
        }
        assertThat(headers.map())
                .as(what)
                .doesNotContainKeys("Access-Control-Allow-Origin", "access-control-allow-origin");
        if (PUBLIC_FILES.stream().noneMatch(path::startsWith)) {
            assertThat(headers.firstValue("Cache-Control").orElse("")).as(what).contains("no-store");
        }
        assertThat(headers.allValues("Set-Cookie"))
                .as(what)
                .allSatisfy(cookie -> assertThat(cookie).contains("HttpOnly"))
                .filteredOn(cookie -> !TAKEN_AWAY.matcher(cookie).lookingAt())
                .allSatisfy(cookie -> assertThat(cookie).contains("SameSite=Lax"));
    }
}
