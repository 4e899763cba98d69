package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import studio.stancebook.activity.Crowd.Sent;
import studio.stancebook.activity.Writer.Answer;
import studio.stancebook.operations.PackagedStudio;
import studio.stancebook.operations.StudioApi;
import studio.stancebook.statistics.BandCalculator;
import studio.stancebook.statistics.BandEdges;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.SortedColumn;
import tools.jackson.databind.JsonNode;

/**
 * Fifty programs write to the packaged server at once; then it is started anew, and what it knows, all of it read from the
 * database now, is what it said before and what follows from the packages alone.
 */
class FiftyWritersIT {

    @TempDir
    Path folder;

    @Test
    void loseNothingAndLeaveWhatIsComputedAnewAfterAStart() throws Exception {
        String token;
        List<Sent> sent;
        Crowd crowd;
        Map<String, JsonNode> said;
        try (PackagedStudio studio = PackagedStudio.in(folder).andWait()) {
            token = StudioApi.asLead(studio).secret();
            Writer writer = new Writer(studio.address().toString(), token);
            crowd = new Crowd(writer);
            try (crowd) {
                sent = crowd.write();
            }
            said = everything(crowd, writer);
            studio.stop();
        }
        try (PackagedStudio studio = PackagedStudio.in(folder).andWait()) {
            Writer reader = new Writer(studio.address().toString(), token);
            Map<String, JsonNode> anew = everything(crowd, reader);
            assertThat(anew.keySet()).isEqualTo(said.keySet());
            anew.forEach((path, answer) -> assertAlike(path, answer, said.get(path)));
            for (int i = 0; i < Crowd.THINGS; i++) {
                assertThingsHaveEveryChange(i, crowd, sent, reader);
                assertVerdictsAreThoseOfTheirBands(i, crowd, reader);
            }
            Map<Long, JsonNode> packages = packagesOf(crowd.growing, reader);
            assertThat(packages)
                    .hasSize(Crowd.THINGS
                            + (int) sent.stream()
                                    .filter(one -> one.path().equals(crowd.growing) && one.done())
                                    .count());
            for (String measure : Crowd.BANDED) {
                assertClassIsThatOfItsPackages(measure, crowd.growing, packages, reader);
                assertBandsAreThoseOfTheirClass(measure, crowd.growing, packages, reader);
                assertClassIsThatOfItsPackages(measure, crowd.changing, packagesOf(crowd.changing, reader), reader);
            }
            assertThat(read(reader, "/api/v1/activity/verification")
                            .get("whole")
                            .asBoolean())
                    .isTrue();
        }
    }

    /** Statistics, bands and verdicts as they are answered, by path. */
    private static Map<String, JsonNode> everything(Crowd crowd, Writer reader) throws Exception {
        List<String> paths = new ArrayList<>();
        for (String segment : List.of(crowd.changing, crowd.growing)) {
            paths.add("/api/v1/segments/" + segment + "/statistics");
        }
        for (int i = 0; i < Crowd.THINGS; i++) {
            paths.add(crowd.bandPath(i) + "/versions?size=500");
            paths.add(crowd.packagePath(i));
            int newest = read(reader, crowd.sketchPath(i)).get("revision").asInt();
            for (int number = 1; number <= newest; number++) {
                paths.add(crowd.sketchPath(i) + "/assessment?revision=" + number);
            }
        }
        Map<String, JsonNode> answers = new TreeMap<>();
        for (String path : paths) {
            answers.put(path, read(reader, path));
        }
        return answers;
    }

    /** The same, figures up to the order in which a sum is added up. */
    private static void assertAlike(String where, JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            assertThat(one.asDouble())
                    .as(where)
                    .isCloseTo(other.asDouble(), within(1e-12 * Math.max(1, Math.abs(other.asDouble()))));
        } else if (one.isContainer()) {
            assertThat(one.size()).as(where).isEqualTo(other.size());
            for (String name : one.propertyNames()) {
                assertAlike(where + "/" + name, one.path(name), other.path(name));
            }
            for (int i = 0; one.isArray() && i < one.size(); i++) {
                assertAlike(where + "/" + i, one.path(i), other.path(i));
            }
        } else {
            assertThat(one).as(where).isEqualTo(other);
        }
    }

    private static JsonNode read(Writer reader, String path) throws Exception {
        Answer answer = reader.get(path);
        assertThat(answer.status()).as(path).isEqualTo(200);
        return answer.json();
    }

    private static void assertThingsHaveEveryChange(int i, Crowd crowd, List<Sent> sent, Writer reader)
            throws Exception {
        Map<Long, Integer> changes = Crowd.done(crowd.packagePath(i), sent, 0);
        Answer now = reader.get(crowd.packagePath(i));
        assertThat(now.version()).isEqualTo(changes.size());
        assertThat(now.json().at("/dimensions/wheelbase").asInt()).isEqualTo(changes.get(now.version()));

        Map<Long, Integer> versions = Crowd.done(crowd.bandPath(i), sent, 1);
        assertThat(read(reader, crowd.bandPath(i) + "/versions?size=500")
                        .get("total")
                        .asInt())
                .isEqualTo(versions.size() + 1);

        long revisions = sent.stream()
                .filter(one -> one.path().equals(crowd.sketchPath(i)) && one.done())
                .count();
        assertThat(read(reader, crowd.sketchPath(i)).get("revision").asLong()).isEqualTo(revisions + 1);
    }

    /** Each verdict names a version of a band that there is, has its limits, and says what follows from them. */
    private static void assertVerdictsAreThoseOfTheirBands(int i, Crowd crowd, Writer reader) throws Exception {
        Map<String, JsonNode> bands = new TreeMap<>();
        for (int band = 0; band < Crowd.THINGS; band++) {
            String measure = Crowd.BANDED.get(band);
            read(reader, crowd.bandPath(band) + "/versions?size=500")
                    .get("items")
                    .forEach(version -> bands.put(measure + " " + version.get("version"), version));
        }
        int newest = read(reader, crowd.sketchPath(i)).get("revision").asInt();
        for (int number = 1; number <= newest; number++) {
            int judged = 0;
            for (JsonNode verdict : read(reader, crowd.sketchPath(i) + "/assessment?revision=" + number)
                    .get("verdicts")) {
                if (verdict.get("bandVersion") != null
                        && !verdict.get("bandVersion").isNull()) {
                    JsonNode band = bands.get(verdict.get("measure").asString() + " " + verdict.get("bandVersion"));
                    assertVerdict(
                            verdict,
                            band.get("lower").asDouble(),
                            band.get("upper").asDouble());
                    judged++;
                }
            }
            assertThat(judged).isEqualTo(Crowd.BANDED.size());
        }
    }

    private static void assertVerdict(JsonNode verdict, double lower, double upper) {
        double value = verdict.get("value").asDouble();
        assertThat(verdict.get("lower").asDouble()).isEqualTo(lower);
        assertThat(verdict.get("upper").asDouble()).isEqualTo(upper);
        String where = value < lower ? "outside-low" : value > upper ? "outside-high" : "inside";
        assertThat(verdict.get("verdict").asString()).isIn(where, "too-close");
    }

    /** The packages of a segment by their ids. */
    private static Map<Long, JsonNode> packagesOf(String segment, Writer reader) throws Exception {
        Map<Long, JsonNode> packages = new TreeMap<>();
        for (JsonNode entry :
                read(reader, "/api/v1/packages?size=500&segment=" + segment).get("items")) {
            long id = entry.get("id").asLong();
            packages.put(id, read(reader, "/api/v1/packages/" + id));
        }
        return packages;
    }

    private static SortedColumn column(String measure, List<JsonNode> packages) {
        return SortedColumn.of(packages.stream()
                .mapToDouble(one -> one.at("/measures/" + measure + "/value").asDouble())
                .toArray());
    }

    private static void assertClassIsThatOfItsPackages(
            String measure, String segment, Map<Long, JsonNode> packages, Writer reader) throws Exception {
        SortedColumn column = column(measure, List.copyOf(packages.values()));
        JsonNode line = read(reader, "/api/v1/segments/" + segment + "/statistics")
                .get("measures")
                .valueStream()
                .filter(one -> one.get("measure").asString().equals(measure))
                .findFirst()
                .orElseThrow();
        assertThat(line.get("n").asInt()).isEqualTo(column.n());
        assertThat(line.get("mean").asDouble())
                .isCloseTo(column.summary().mean().orElseThrow(), within(1e-12));
        assertThat(line.get("median").asDouble()).isEqualTo(column.median());
        assertThat(line.get("min").asDouble()).isEqualTo(column.min());
        assertThat(line.get("max").asDouble()).isEqualTo(column.max());
    }

    /** Each addition makes one revision of the class, so the class of a band was the first so many packages. */
    private static void assertBandsAreThoseOfTheirClass(
            String measure, String segment, Map<Long, JsonNode> packages, Writer reader) throws Exception {
        List<JsonNode> inOrder = List.copyOf(packages.values());
        String path = "/api/v1/segments/" + segment + "/bands/" + measure + "/versions?size=500";
        for (JsonNode band : read(reader, path).get("items")) {
            SortedColumn column =
                    column(measure, inOrder.subList(0, band.get("classRevision").asInt()));
            BandMethod method = new BandMethod.Robust(band.at("/setting/k").asDouble());
            BandEdges edges = (BandEdges) BandCalculator.compute(method, column);
            assertThat(band.get("n").asInt()).isEqualTo(column.n());
            assertThat(band.get("lower").asDouble()).isEqualTo(edges.interval().lower());
            assertThat(band.get("upper").asDouble()).isEqualTo(edges.interval().upper());
        }
    }
}
