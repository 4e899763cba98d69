package studio.stancebook.exchange.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.geometry.Point;

class CellGuardTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "'=x", "'quoted"})
    void putsAnApostropheBeforeWhatASpreadsheetActsOn(String text) {
        assertThat(CellGuard.guarded(text)).isEqualTo("'" + text);
    }

    @ParameterizedTest
    @CsvSource({"plain,plain", "a=b,a=b", "1-2,1-2"})
    void leavesOtherTextAlone(String text, String cell) {
        assertThat(CellGuard.guarded(text)).isEqualTo(cell);
    }

    @Test
    void doesNotTakeAnApostropheThatBelongsToAForeignText() {
        assertThat(CellGuard.unguarded("'68 Coupé")).isEqualTo("'68 Coupé");
        assertThat(CellGuard.unguarded("'")).isEqualTo("'");
    }

    @Test
    void givesEveryTextBack() {
        Random random = new Random(4);
        String letters = "'=+-@\t\r\nab1 ";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(6); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            String guarded = CellGuard.guarded(text.toString());
            assertThat(CellGuard.unguarded(guarded)).isEqualTo(text.toString());
            assertThat(guarded).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("-");
        }
    }

    @Test
    void writesNumbersThatReadBackAsTheSameDouble() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(10) - 5);
            String text = PlainNumber.of(value);
            assertThat(text).matches("-?\\d+(\\.\\d+)?");
            assertThat(ColumnUnit.MM.toKept(NumberReading.of(text, true).number()))
                    .isEqualTo(value);
        }
        assertThat(PlainNumber.of(2850)).isEqualTo("2850");
        assertThat(PlainNumber.of(1e7)).isEqualTo("10000000");
        assertThat(PlainNumber.of(-0.0)).isEqualTo("0");
    }

    @Test
    void readsPoints() {
        assertThat(PointText.parse("-850 560; -600 330.5;", ColumnUnit.MM).orElseThrow())
                .containsExactly(new Point(-850, 560), new Point(-600, 330.5));
        assertThat(PointText.parse("1 2;3 4", ColumnUnit.IN).orElseThrow())
                .containsExactly(new Point(25.4, 50.8), new Point(76.2, 101.6));
        assertThat(PointText.parse("1 2 3; 4 5", ColumnUnit.MM)).isEmpty();
        assertThat(PointText.parse("1,5 2", ColumnUnit.MM)).isEmpty();
        assertThat(PointText.of(new Point(-0.1, 1e-7))).isEqualTo("-0.1 0.0000001");
    }
}
