package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import studio.stancebook.activity.Writer.Answer;
import studio.stancebook.catalogue.Invented;

/**
 * Fifty programs that write to the same packages, bands and proposals of a studio at once, over HTTP alone, so that any
 * server can be written to.
 */
final class Crowd implements AutoCloseable {

    static final int WRITERS = 50;
    static final int THINGS = 3;
    static final List<String> BANDED = List.of("wheelbase-in-wheels", "height-in-wheels", "wheels-spanned");

    private static final int STEPS = Integer.getInteger("stancebook.steps", 3);

    private final ExecutorService people = Executors.newFixedThreadPool(WRITERS);
    private final Writer writer;

    /** The ids of the packages that are changed. */
    final List<Long> packages = new ArrayList<>();

    /** The ids of the proposals. */
    final List<Long> sketches = new ArrayList<>();

    /** The segment whose packages are changed. */
    final String changing = Invented.key("changing");

    /** The segment to which packages are added, while its bands are set and proposals judged by them. */
    final String growing = Invented.key("growing");

    /** Makes what is written to. */
    Crowd(Writer writer) throws Exception {
        this.writer = writer;
        for (String segment : List.of(changing, growing)) {
            made(
                    "/api/v1/segments",
                    "{\"key\": \"%s\", \"name\": \"%s\", \"description\": \"\"}".formatted(segment, segment));
            for (int i = 0; i < THINGS; i++) {
                long id = made("/api/v1/packages", drawn("Package " + i, segment, 2500 + 10 * i));
                if (segment.equals(changing)) {
                    packages.add(id);
                }
            }
        }
        for (int i = 0; i < THINGS; i++) {
            assertThat(writer.put(bandPath(i), band(1000)).status()).isEqualTo(201);
        }
        for (int i = 0; i < THINGS; i++) {
            sketches.add(made("/api/v1/proposals", drawn("Sketch " + i, growing, 2600)));
        }
    }

    private long made(String path, String body) throws Exception {
        Answer answer = writer.post(path, body);
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
        return answer.json().path("id").asLong(-1);
    }

    @Override
    public void close() {
        people.shutdownNow();
    }

    /**
     * A write that was answered.
     *
     * @param expected the version it was made from
     * @param value what it wrote
     */
    record Sent(String path, long expected, Answer answer, int value) {

        boolean done() {
            return answer.status() == 200 || answer.status() == 201;
        }
    }

    /** Everybody writes to each kind of thing at once, then everybody what they like. */
    List<Sent> write() throws Exception {
        List<Sent> sent = new ArrayList<>();
        sent.addAll(clash(packagePath(0)));
        sent.addAll(clash(bandPath(0)));
        sent.addAll(clash(sketchPath(0)));
        sent.addAll(together(this::work));
        assertThat(sent).extracting(one -> one.answer().status()).containsOnly(200, 201, 412);
        return sent;
    }

    /** Everybody writes to one thing, having seen the same version of it: one gets through, all others are stale. */
    private List<Sent> clash(String path) throws Exception {
        long seen = version(path);
        CyclicBarrier together = new CyclicBarrier(WRITERS);
        List<Sent> sent = together(person -> {
            together.await(60, TimeUnit.SECONDS);
            return List.of(write(path, seen, 2600 + person));
        });
        assertThat(sent.stream().filter(Sent::done).count()).as(path).isEqualTo(1);
        assertThat(sent.stream().filter(one -> one.answer().status() == 412).count())
                .as(path)
                .isEqualTo(WRITERS - 1);
        return sent;
    }

    /** What one person does when left alone: now this, now that, each once. */
    private List<Sent> work(int person) throws Exception {
        List<Sent> sent = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            int value = 2300 + 10 * person + step;
            int thing = (person + step) % THINGS;
            switch ((person + step) % 4) {
                case 0 -> sent.add(writeOn(packagePath(thing), value));
                case 1 -> sent.add(writeOn(bandPath(thing), value));
                case 2 -> sent.add(writeOn(sketchPath(thing), value));
                default -> sent.add(add("Of writer " + person + ", " + step, value));
            }
        }
        return sent;
    }

    /** What somebody does. */
    private interface Work {

        List<Sent> of(int person) throws Exception;
    }

    private List<Sent> together(Work work) throws Exception {
        List<Callable<List<Sent>>> visits = new ArrayList<>();
        for (int person = 0; person < WRITERS; person++) {
            int number = person;
            visits.add(() -> work.of(number));
        }
        List<Sent> all = new ArrayList<>();
        for (Future<List<Sent>> one : people.invokeAll(visits, 2, TimeUnit.MINUTES)) {
            all.addAll(one.get());
        }
        return all;
    }

    private Sent writeOn(String path, int value) throws Exception {
        return write(path, version(path), value);
    }

    private Sent write(String path, long expected, int value) throws Exception {
        boolean sketch = path.startsWith("/api/v1/proposals");
        Answer answer = sketch
                ? writer.write("POST", path + "/revisions", expected, "{\"dimensions\": " + dimensions(value) + "}")
                : writer.write(
                        "PUT",
                        path,
                        expected,
                        path.contains("/bands/") ? band(value) : drawn("Of " + path, changing, value));
        return new Sent(path, expected, answer, value);
    }

    private Sent add(String name, int value) throws Exception {
        return new Sent(growing, -1, writer.post("/api/v1/packages", drawn(name, growing, value)), value);
    }

    private long version(String path) throws Exception {
        Answer answer = writer.get(path);
        assertThat(answer.status()).isEqualTo(200);
        return answer.version();
    }

    /** What got through to a thing, by the version it made; each made the one after the version it had seen. */
    static Map<Long, Integer> done(String path, List<Sent> sent, long first) {
        Map<Long, Integer> values = new LinkedHashMap<>();
        for (Sent one : sent) {
            if (one.path().equals(path) && one.done()) {
                assertThat(one.answer().version()).isEqualTo(one.expected() + 1);
                assertThat(values.put(one.answer().version(), one.value()))
                        .as("two made version %d of %s", one.answer().version(), path)
                        .isNull();
            }
        }
        assertThat(values).isNotEmpty();
        assertThat(values.keySet())
                .containsExactlyInAnyOrderElementsOf(LongStream.range(first + 1, first + 1 + values.size())
                        .boxed()
                        .toList());
        return values;
    }

    String packagePath(int i) {
        return "/api/v1/packages/" + packages.get(i);
    }

    String bandPath(int i) {
        return "/api/v1/segments/" + growing + "/bands/" + BANDED.get(i);
    }

    String sketchPath(int i) {
        return "/api/v1/proposals/" + sketches.get(i);
    }

    private static String drawn(String name, String segment, int wheelbase) {
        return "{\"name\": \"%s\", \"segment\": \"%s\", \"dimensions\": %s}"
                .formatted(name, segment, dimensions(wheelbase));
    }

    private static String dimensions(int wheelbase) {
        return "{\"wheelbase\": %d, \"overallHeight\": %d, \"frontTyreDiameter\": 700, \"rearTyreDiameter\": 700}"
                .formatted(wheelbase, 1400 + wheelbase % 97);
    }

    static double k(int value) {
        return value / 1000.0;
    }

    private static String band(int value) {
        return String.format(Locale.ROOT, "{\"method\": \"robust\", \"k\": %s}", k(value));
    }
}
