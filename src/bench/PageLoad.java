import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Opens pages as many people at once, each with a session of its own and the next page as soon as the last has come; says
 * how many requests a second were answered and how long they took. See docs/performance.md.
 */
final class PageLoad {

    private static final Pattern CSRF = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    private final String address;
    private final int people;
    private final long seconds;

    private PageLoad(String address, int people, long seconds) {
        this.address = address;
        this.people = people;
        this.seconds = seconds;
    }

    /** Arguments: address, e-mail, password, people, seconds, then the pages. */
    public static void main(String[] arguments) throws Exception {
        PageLoad load =
                new PageLoad(arguments[0], Integer.parseInt(arguments[3]), Long.parseLong(arguments[4]));
        List<HttpClient> sessions = new ArrayList<>();
        for (int i = 0; i < load.people; i++) {
            sessions.add(load.signedIn(arguments[1], arguments[2]));
        }
        for (String page : List.of(arguments).subList(5, arguments.length)) {
            load.run(sessions, page, Math.max(1, load.seconds / 3));
            load.report(page, load.run(sessions, page, load.seconds));
        }
        System.exit(0);
    }

    private HttpClient signedIn(String email, String password) throws Exception {
        HttpClient client =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).cookieHandler(new CookieManager()).build();
        Matcher token = CSRF.matcher(client.send(request("/sign-in").build(), text()).body());
        if (!token.find()) {
            throw new IllegalStateException("There is no form at " + address + "/sign-in");
        }
        String form = "email=" + encoded(email) + "&password=" + encoded(password) + "&_csrf=" + encoded(token.group(1));
        HttpResponse<String> answer = client.send(
                request("/sign-in")
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                text());
        if (answer.statusCode() != 302) {
            throw new IllegalStateException(email + " could not sign in: " + answer.statusCode());
        }
        return client;
    }

    /** The times of all requests in nanoseconds, ascending. */
    private long[] run(List<HttpClient> sessions, String page, long forSeconds) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(sessions.size());
        long end = System.nanoTime() + forSeconds * 1_000_000_000;
        List<Callable<List<Long>>> visits = new ArrayList<>();
        sessions.forEach(session -> visits.add(() -> visit(session, page, end)));
        List<Long> times = new ArrayList<>();
        for (Future<List<Long>> visit : threads.invokeAll(visits)) {
            times.addAll(visit.get());
        }
        threads.shutdown();
        return times.stream().mapToLong(Long::longValue).sorted().toArray();
    }

    private List<Long> visit(HttpClient session, String page, long end) throws Exception {
        List<Long> times = new ArrayList<>();
        while (System.nanoTime() < end) {
            long begun = System.nanoTime();
            HttpResponse<String> answer = session.send(request(page).build(), text());
            times.add(System.nanoTime() - begun);
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(page + " answered " + answer.statusCode());
            }
        }
        return times;
    }

    private void report(String page, long[] times) {
        System.out.printf(
                Locale.ROOT,
                "%s: %d people, %.0f requests/s, p50 %.0f ms, p99 %.0f ms, slowest %.0f ms%n",
                page,
                people,
                times.length / (double) seconds,
                millis(times, 0.5),
                millis(times, 0.99),
                millis(times, 1));
    }

    /** By nearest rank. */
    private static double millis(long[] times, double share) {
        return times[Math.max(0, (int) Math.ceil(share * times.length) - 1)] / 1e6;
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path));
    }

    private static HttpResponse.BodyHandler<String> text() {
        return HttpResponse.BodyHandlers.ofString();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
