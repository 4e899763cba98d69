package studio.stancebook.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.account.Role;
import studio.stancebook.account.SignedIn;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.review.Writer.Answer;
import studio.stancebook.statistics.BandMethod;

/** Fifty programs that write to the same packages, bands and proposals, over HTTP. */
abstract class Crowd {

    static final int WRITERS = 50;
    static final int STEPS = 6;
    static final int THINGS = 3;
    static final List<String> BANDED = List.of("wheelbase-in-wheels", "height-in-wheels", "wheels-spanned");

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Bands bands;

    @Autowired
    Proposals proposals;

    final ExecutorService crowd = Executors.newFixedThreadPool(WRITERS);
    final List<Long> packages = new ArrayList<>();
    final List<Long> sketches = new ArrayList<>();
    SignedIn lead;
    Writer writer;

    /** Whose packages change. */
    String changing = "";

    /** To which packages are added, while its bands are set and proposals judged by them. */
    String growing = "";

    @BeforeEach
    void make() throws Exception {
        lead = studio.person(Role.LEAD);
        writer = new Writer(studio.address(), studio.token(Role.LEAD));
        changing = Invented.key("changing");
        growing = Invented.key("growing");
        segments.create(changing, "Segment of a test", "");
        segments.create(growing, "Segment of a test", "");
        for (int i = 0; i < THINGS; i++) {
            packages.add(catalogue
                    .add(Invented.draft(changing, "Package " + i, 2500 + 100 * i), "Tests")
                    .id());
            writer.post(
                    "/api/v1/packages",
                    "{\"name\": \"Package %d\", \"segment\": \"%s\", \"dimensions\": %s}"
                            .formatted(i, growing, dimensions(2500 + 10 * i)));
        }
        BANDED.forEach(
                measure -> bands.set(growing, measure, BandSetting.of(new BandMethod.Robust(1)), "", null, "Tests"));
        for (int i = 0; i < THINGS; i++) {
            ProposalDraft draft = new ProposalDraft(
                    "Sketch " + i, growing, Invented.dimensions(2600).build(), "");
            sketches.add(proposals.make(draft, lead).id());
        }
    }

    @AfterEach
    void sendHome() {
        crowd.shutdownNow();
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

    /** Everybody writes to one thing, having seen the same version of it: one gets through, all others are stale. */
    List<Sent> clash(String path) throws Exception {
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
    List<Sent> work(int person) throws Exception {
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
    interface Work {

        List<Sent> of(int person) throws Exception;
    }

    List<Sent> together(Work work) throws Exception {
        List<Callable<List<Sent>>> people = new ArrayList<>();
        for (int person = 0; person < WRITERS; person++) {
            int number = person;
            people.add(() -> work.of(number));
        }
        List<Sent> all = new ArrayList<>();
        for (Future<List<Sent>> one : crowd.invokeAll(people, 2, TimeUnit.MINUTES)) {
            all.addAll(one.get());
        }
        return all;
    }

    Sent writeOn(String path, int value) throws Exception {
        return write(path, version(path), value);
    }

    Sent write(String path, long expected, int value) throws Exception {
        boolean sketch = path.startsWith("/api/v1/proposals");
        Answer answer = sketch
                ? writer.write("POST", path + "/revisions", expected, "{\"dimensions\": " + dimensions(value) + "}")
                : writer.write("PUT", path, expected, path.contains("/bands/") ? band(value) : drawn(path, value));
        return new Sent(path, expected, answer, value);
    }

    Sent add(String name, int value) throws Exception {
        String body = "{\"name\": \"%s\", \"segment\": \"%s\", \"dimensions\": %s}"
                .formatted(name, growing, dimensions(value));
        return new Sent(growing, -1, writer.post("/api/v1/packages", body), value);
    }

    long version(String path) throws Exception {
        Answer answer = writer.get(path);
        assertThat(answer.status()).isEqualTo(200);
        return answer.version();
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

    String drawn(String path, int wheelbase) {
        return "{\"name\": \"Of %s\", \"segment\": \"%s\", \"dimensions\": %s}"
                .formatted(path, changing, dimensions(wheelbase));
    }

    static String dimensions(int wheelbase) {
        return "{\"wheelbase\": %d, \"overallHeight\": %d, \"frontTyreDiameter\": 700, \"rearTyreDiameter\": 700}"
                .formatted(wheelbase, 1400 + wheelbase % 97);
    }

    static double k(int value) {
        return value / 1000.0;
    }

    static String band(int value) {
        return String.format(Locale.ROOT, "{\"method\": \"robust\", \"k\": %s}", k(value));
    }
}
