package studio.stancebook.exchange.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import studio.stancebook.geometry.Point;

/** Numbers and points as they are written into cells and read from them. */
class CellTextTest {

    @Test
    void writesNumbersThatReadBackAsTheSameDouble() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(10) - 5);
            String text = PlainNumber.of(value);
            assertThat(text).matches("-?\\d+(\\.\\d+)?");
            assertThat(ColumnUnit.MM.toKept(CellNumber.of(text, true).number())).isEqualTo(value);
        }
        assertThat(PlainNumber.of(2850)).isEqualTo("2850");
        assertThat(PlainNumber.of(1e7)).isEqualTo("10000000");
        assertThat(PlainNumber.of(-0.0)).isEqualTo("0");
    }

    @Test
    void readsPoints() {
        assertThat(PointCells.parse("-850 560; -600 330.5;", ColumnUnit.MM).orElseThrow())
                .containsExactly(new Point(-850, 560), new Point(-600, 330.5));
        assertThat(PointCells.parse("1 2;3 4", ColumnUnit.IN).orElseThrow())
                .containsExactly(new Point(25.4, 50.8), new Point(76.2, 101.6));
        assertThat(PointCells.parse("1 2 3; 4 5", ColumnUnit.MM)).isEmpty();
        assertThat(PointCells.parse("1,5 2", ColumnUnit.MM)).isEmpty();
        assertThat(PointCells.of(new Point(-0.1, 1e-7))).isEqualTo("-0.1 0.0000001");
    }
}
