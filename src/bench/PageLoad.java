import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.net.HttpURLConnection;
import java.net.URI;
import java.net.URL;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Opens pages as many people at once, each with a session of its own and the next page as soon as the last has come; says
 * how many requests a second were answered, how long they took, and which failed. See docs/performance.md.
 *
 * <p>With {@code -Dserver=PID} of a server on the same machine it also says how much processor time a request took there.
 * {@code -Dthink=MS} lets each person wait as long after each page; {@code -Dencoding=identity} takes pages uncompressed,
 * where browsers take them as {@code gzip}.
 */
final class PageLoad {

    private static final Pattern CSRF = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final Optional<ProcessHandle> server =
            Optional.ofNullable(Long.getLong("server")).flatMap(ProcessHandle::of);
    private final long thinkMillis = Long.getLong("think", 0);
    private final String encoding = System.getProperty("encoding", "gzip");
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
        System.setProperty("http.maxConnections", arguments[3]);
        PageLoad load =
                new PageLoad(arguments[0], Integer.parseInt(arguments[3]), Long.parseLong(arguments[4]));
        List<String> sessions = new ArrayList<>();
        for (int i = 0; i < load.people; i++) {
            sessions.add(load.signedIn(arguments[1], arguments[2]));
        }
        for (String page : List.of(arguments).subList(5, arguments.length)) {
            load.run(sessions, page, Math.max(1, load.seconds / 3));
            load.report(page, sessions);
        }
    }

    /** The cookies of somebody who has just signed in. */
    private String signedIn(String email, String password) throws Exception {
        Map<String, String> cookies = new TreeMap<>();
        HttpResponse<String> form = client.send(request("/sign-in").build(), HttpResponse.BodyHandlers.ofString());
        keep(form, cookies);
        Matcher token = CSRF.matcher(form.body());
        if (!token.find()) {
            throw new IllegalStateException("There is no form at " + address + "/sign-in");
        }
        String typed = "email=" + encoded(email) + "&password=" + encoded(password) + "&_csrf=" + encoded(token.group(1));
        HttpResponse<String> answer = client.send(
                request("/sign-in")
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Cookie", header(cookies))
                        .POST(HttpRequest.BodyPublishers.ofString(typed))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        keep(answer, cookies);
        if (answer.statusCode() != 302 || answer.headers().firstValue("Location").orElse("").contains("sign-in")) {
            throw new IllegalStateException(email + " could not sign in: " + answer.statusCode());
        }
        return header(cookies);
    }

    private static void keep(HttpResponse<?> answer, Map<String, String> cookies) {
        for (String cookie : answer.headers().allValues("Set-Cookie")) {
            String[] nameAndValue = cookie.split(";", 2)[0].split("=", 2);
            cookies.put(nameAndValue[0], nameAndValue[1]);
        }
    }

    private static String header(Map<String, String> cookies) {
        return cookies.entrySet().stream()
                .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
                .collect(Collectors.joining("; "));
    }

    /**
     * What some or all visits saw.
     *
     * @param nanos the times of the answers that were as they should be
     * @param bytes of the bodies of these
     * @param failures what went wrong, and how often
     */
    private record Seen(List<Long> nanos, long bytes, Map<String, Integer> failures) {

        static Seen of(List<Seen> all) {
            List<Long> nanos = new ArrayList<>();
            Map<String, Integer> failures = new TreeMap<>();
            for (Seen one : all) {
                nanos.addAll(one.nanos);
                one.failures.forEach((failure, times) -> failures.merge(failure, times, Integer::sum));
            }
            Collections.sort(nanos);
            return new Seen(nanos, all.stream().mapToLong(Seen::bytes).sum(), failures);
        }

        /** By nearest rank. */
        double millis(double share) {
            return nanos.isEmpty() ? Double.NaN : nanos.get(Math.max(0, (int) Math.ceil(share * nanos.size()) - 1)) / 1e6;
        }
    }

    private Seen run(List<String> sessions, String page, long forSeconds) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(sessions.size());
        try {
            long end = System.nanoTime() + forSeconds * 1_000_000_000;
            List<Callable<Seen>> visits = new ArrayList<>();
            sessions.forEach(session -> visits.add(() -> visit(session, page, end)));
            List<Seen> all = new ArrayList<>();
            for (Future<Seen> visit : threads.invokeAll(visits)) {
                all.add(visit.get());
            }
            return Seen.of(all);
        } catch (ExecutionException failure) {
            throw new IllegalStateException("A visit of " + page + " broke off", failure.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    private Seen visit(String session, String page, long end) throws InterruptedException, IOException {
        List<Long> nanos = new ArrayList<>();
        Map<String, Integer> failures = new TreeMap<>();
        long bytes = 0;
        URL asked = URI.create(address + page).toURL();
        while (System.nanoTime() < end) {
            long begun = System.nanoTime();
            try {
                // Takes less of the processor, which the server has to share with this program, than HttpClient does.
                HttpURLConnection connection = (HttpURLConnection) asked.openConnection();
                connection.setInstanceFollowRedirects(false);
                connection.setReadTimeout((int) PATIENCE.toMillis());
                connection.setRequestProperty("Cookie", session);
                connection.setRequestProperty("Accept-Encoding", encoding);
                int status = connection.getResponseCode();
                int length = body(connection).length;
                if (status == 200) {
                    nanos.add(System.nanoTime() - begun);
                    bytes += length;
                } else {
                    failures.merge("status " + status, 1, Integer::sum);
                }
            } catch (IOException failure) {
                failures.merge(failure.getClass().getSimpleName(), 1, Integer::sum);
            }
            Thread.sleep(thinkMillis);
        }
        return new Seen(nanos, bytes, failures);
    }

    private static byte[] body(HttpURLConnection connection) throws IOException {
        InputStream refusal = connection.getErrorStream();
        try (InputStream body = refusal == null ? connection.getInputStream() : refusal) {
            return body.readAllBytes();
        }
    }

    private void report(String page, List<String> sessions) throws Exception {
        Duration serverBefore = processorTime(server);
        Duration ownBefore = processorTime(Optional.of(ProcessHandle.current()));
        long begun = System.nanoTime();
        Seen seen = run(sessions, page, seconds);
        double took = (System.nanoTime() - begun) / 1e9;
        int answers = Math.max(1, seen.nanos().size());
        System.out.printf(
                Locale.ROOT,
                "%s: %d people, %.0f requests/s, p50 %.0f ms, p99 %.0f ms, slowest %.0f ms, %.1f KB, errors %s%n",
                page,
                people,
                answers / took,
                seen.millis(0.5),
                seen.millis(0.99),
                seen.millis(1),
                seen.bytes() / 1024.0 / answers,
                seen.failures().isEmpty() ? "none" : seen.failures());
        System.out.printf(
                Locale.ROOT,
                "  processor time a request: server %s, this program %.2f ms; load of the machine %.1f%n",
                server.isEmpty()
                        ? "not asked for"
                        : "%.2f ms".formatted(millisEach(processorTime(server).minus(serverBefore), answers)),
                millisEach(processorTime(Optional.of(ProcessHandle.current())).minus(ownBefore), answers),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static Duration processorTime(Optional<ProcessHandle> process) {
        return process.flatMap(running -> running.info().totalCpuDuration()).orElse(Duration.ZERO);
    }

    private static double millisEach(Duration together, int answers) {
        return together.toNanos() / 1e6 / answers;
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).timeout(PATIENCE);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
