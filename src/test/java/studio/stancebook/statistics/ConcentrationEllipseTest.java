package studio.stancebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Ellipses of pairs, against means, covariances and squared distances that R gives for Cars93. */
class ConcentrationEllipseTest {

    private static final double MM_PER_INCH = 25.4;

    private static final JsonNode REFERENCE = ReferenceFile.json("mahalanobis_reference.json");

    /** Wheelbase and length of Cars93 in mm, of all types or of one. */
    private static PairMoments cars(String type) {
        List<String[]> rows = ReferenceFile.lines("cars93.csv").stream()
                .skip(1)
                .map(line -> line.split(","))
                .filter(row -> type.isEmpty() || row[1].replace("\"", "").equals(type))
                .toList();
        return PairMoments.of(
                rows.stream()
                        .mapToDouble(row -> Double.parseDouble(row[2]) * MM_PER_INCH)
                        .toArray(),
                rows.stream()
                        .mapToDouble(row -> Double.parseDouble(row[3]) * MM_PER_INCH)
                        .toArray());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Compact", "Large"})
    void hasTheMeansAndCovariancesOfCars93(String type) {
        JsonNode expected =
                type.isEmpty() ? REFERENCE : REFERENCE.get("per_class").get(type);
        PairMoments cars = cars(type);

        assertThat(cars.meanX()).isCloseTo(expected.get("mean").get(0).asDouble(), within(1e-6));
        assertThat(cars.meanY()).isCloseTo(expected.get("mean").get(1).asDouble(), within(1e-6));
        JsonNode covariance = expected.get("cov");
        assertThat(cars.varianceX())
                .isCloseTo(covariance.get("wheelbase_mm").get(0).asDouble(), within(1e-5));
        assertThat(cars.varianceY())
                .isCloseTo(covariance.get("length_mm").get(1).asDouble(), within(1e-4));
        assertThat(cars.covariance())
                .isCloseTo(covariance.get("length_mm").get(0).asDouble(), within(1e-5));
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4, upper critical values for two degrees. */
    @ParameterizedTest
    @CsvSource({"0.90, 4.605", "0.95, 5.991", "0.975, 7.378", "0.99, 9.210", "0.999, 13.816"})
    void takesTheChiSquareDistributionWithTwoDegreesOfFreedom(double share, double expected) {
        assertThat(ConcentrationEllipse.chiSquareOfTwo(share)).isCloseTo(expected, within(5e-4));
    }

    /** Definition: on the edge the squared distance is the quantile; here -2 ln 0.2 = 3.218876 for 80 %. */
    @Test
    void runsWhereTheSquaredDistanceIsTheQuantile() {
        ConcentrationEllipse ellipse = ConcentrationEllipse.of(cars("Compact"), 0.8);

        for (int degrees = 0; degrees < 360; degrees += 7) {
            double angle = Math.toRadians(degrees);
            assertThat(ellipse.moments().squaredDistance(ellipse.xAt(angle), ellipse.yAt(angle)))
                    .isCloseTo(3.218876, within(1e-6));
        }
    }

    /** R: eigen() of the covariance; the half axes are the roots of quantile times eigenvalue, by closed form of 2 x 2. */
    @Test
    void hasTheHalfAxesThatTheEigenvaluesGive() {
        PairMoments cars = cars("");
        ConcentrationEllipse ellipse = ConcentrationEllipse.of(cars, 0.8);
        double middle = (cars.varianceX() + cars.varianceY()) / 2;
        double apart = Math.hypot((cars.varianceX() - cars.varianceY()) / 2, cars.covariance());
        double[] radii = IntStream.range(0, 3600)
                .mapToDouble(i -> Math.hypot(
                        ellipse.xAt(i * Math.PI / 1800) - cars.meanX(), ellipse.yAt(i * Math.PI / 1800) - cars.meanY()))
                .sorted()
                .toArray();

        assertThat(radii[3599]).isCloseTo(Math.sqrt(3.2188758 * (middle + apart)), within(1e-2));
        assertThat(radii[0]).isCloseTo(Math.sqrt(3.2188758 * (middle - apart)), within(1e-2));
    }

    @Test
    void holdsWhatLiesInIt() {
        ConcentrationEllipse ellipse = ConcentrationEllipse.of(cars(""), 0.8);
        double edge = ellipse.moments().meanX() + ellipse.halfWidth();

        assertThat(ellipse.contains(ellipse.moments().meanX(), ellipse.moments().meanY()))
                .isTrue();
        assertThat(ellipse.contains(edge + 1, ellipse.yAt(0))).isFalse();
    }

    @Test
    void isNotThereForTooFewPairsOrPairsOnALine() {
        PairMoments two = PairMoments.of(new double[] {1, 2}, new double[] {1, 5});
        PairMoments line = PairMoments.of(new double[] {0.1, 0.2, 0.3, 0.7}, new double[] {1.3, 1.6, 1.9, 3.1});
        PairMoments upright = PairMoments.of(new double[] {4, 4, 4}, new double[] {1, 2, 5});

        assertThat(ConcentrationEllipse.lack(PairMoments.of(new double[0], new double[0])))
                .hasValue(ConcentrationEllipse.Lack.TOO_FEW);
        assertThat(ConcentrationEllipse.lack(two)).hasValue(ConcentrationEllipse.Lack.TOO_FEW);
        assertThat(ConcentrationEllipse.lack(line)).hasValue(ConcentrationEllipse.Lack.ON_A_LINE);
        assertThat(ConcentrationEllipse.lack(upright)).hasValue(ConcentrationEllipse.Lack.ON_A_LINE);
        assertThatThrownBy(() -> ConcentrationEllipse.of(line, 0.8))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ON_A_LINE");
    }
}
