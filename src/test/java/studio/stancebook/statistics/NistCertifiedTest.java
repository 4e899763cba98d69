package studio.stancebook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Certified mean and standard deviation of the NIST Statistical Reference Datasets, univariate. NumAcc3 and NumAcc4
 * cannot be met closer than their decimal data can be held in binary: 1e-9 and 1e-8.
 */
class NistCertifiedTest {

    static Stream<JsonNode> univariateSets() {
        return StreamSupport.stream(
                        ReferenceFile.json("nist_strd.json").get("sets").spliterator(), false)
                .filter(set -> set.get("certified").has("mean"));
    }

    @ParameterizedTest
    @MethodSource("univariateSets")
    void meetsCertifiedMeanAndStandardDeviation(JsonNode set) {
        checkAgainst(set, SortedColumn.of(dataOf(set)));
    }

    @ParameterizedTest
    @MethodSource("univariateSets")
    void meetsThemWhenValuesCameOneByOneAndOthersWereTakenAway(JsonNode set) {
        Random random = new Random(4711);
        SortedColumn column = SortedColumn.of(1e9, -3e7);
        for (double value : dataOf(set)) {
            double visitor = value + 1000 * random.nextGaussian();
            column = column.with(visitor).with(value).without(visitor);
        }
        checkAgainst(set, column.without(1e9).without(-3e7));
    }

    @Test
    void staysExactOnTheHardestSetAfterTwentyThousandChanges() {
        JsonNode set = univariateSets()
                .filter(s -> s.get("name").asString().equals("NumAcc4"))
                .findFirst()
                .orElseThrow();
        double[] data = dataOf(set);
        SortedColumn column = SortedColumn.of(data);
        for (int change = 0; change < 20_000; change++) {
            double value = data[change % data.length];
            column = change % 2 == 0 ? column.without(value) : column.with(data[(change - 1) % data.length]);
        }
        checkAgainst(set, column);
    }

    /** The order of the values plays no part in a column, so this checks that the data are the ones certified. */
    @ParameterizedTest
    @MethodSource("univariateSets")
    void usesTheDataThatWereCertified(JsonNode set) {
        double[] data = dataOf(set);
        double mean = SortedColumn.of(data).mean();
        double products = 0;
        double squares = 0;
        for (int i = 0; i < data.length; i++) {
            products += i == 0 ? 0 : (data[i] - mean) * (data[i - 1] - mean);
            squares += (data[i] - mean) * (data[i] - mean);
        }
        String certified = set.get("certified").get("lag1_autocorrelation").asString();
        assertEquals(Double.parseDouble(certified), products / squares, 2e-9);
    }

    private static void checkAgainst(JsonNode set, SortedColumn column) {
        JsonNode certified = set.get("certified");
        assertEquals(set.get("n").asInt(), column.n());
        assertRelative(certified.get("mean").asString(), column.mean(), 1e-14);
        double sdTolerance = set.get("name").asString().matches("NumAcc[34]") ? 1e-8 : 1e-13;
        assertRelative(
                certified.get("sd_n_minus_1").asString(),
                column.standardDeviation().orElseThrow(),
                sdTolerance);
    }

    private static void assertRelative(String expected, double actual, double tolerance) {
        double value = Double.parseDouble(expected);
        assertEquals(value, actual, Math.abs(value) * tolerance);
    }

    private static double[] dataOf(JsonNode set) {
        if (set.has("data")) {
            return ReferenceFile.doubles(set.get("data"));
        }
        return switch (set.get("name").asString()) {
            case "PiDigits" -> PiDigits.asCertifiedByNist();
            case "NumAcc2" -> alternating("1.2", "1.1", "1.3");
            case "NumAcc3" -> alternating("1000000.2", "1000000.1", "1000000.3");
            case "NumAcc4" -> alternating("10000000.2", "10000000.1", "10000000.3");
            default -> throw new IllegalStateException("No data and no rule for " + set.get("name"));
        };
    }

    private static double[] alternating(String first, String second, String third) {
        double[] data = new double[1001];
        data[0] = Double.parseDouble(first);
        for (int i = 1; i < data.length; i += 2) {
            data[i] = Double.parseDouble(second);
            data[i + 1] = Double.parseDouble(third);
        }
        return data;
    }
}
