package studio.stancebook.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellGuardTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\tx",
                "\rx",
                "'=x",
                "'quoted",
                "\uFF1D1+1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20SUM"
            })
    void putsAnApostropheBeforeWhatASpreadsheetActsOn(String text) {
        assertThat(CellGuard.guarded(text)).isEqualTo("'" + text);
    }

    /** Opened with another separator, what stands behind it is a cell of its own. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"a;=1+1|a;'=1+1", "a;\"=1+1\"|a;'\"=1+1\"", "a; =1|a; =1", ";;@x|;;'@x", "a;'b|a;''b"})
    void putsAnApostropheBehindSeparators(String text, String cell) {
        assertThat(CellGuard.guarded(text)).isEqualTo(cell);
        assertThat(CellGuard.guarded("a\t-1\n=x")).isEqualTo("a\t'-1\n'=x");
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
        String letters = "'=+-@\t\r\nab1 ;\"\uFF1D";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(8); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            String guarded = CellGuard.guarded(text.toString());
            assertThat(CellGuard.unguarded(guarded)).isEqualTo(text.toString());
            assertThat(guarded).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("-");
        }
    }
}
