package studio.stancebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Checked against a plain list that is kept in order by the Java library. */
class AscendingTest {

    private final Random random = new Random(20261129);

    @Test
    void isAListInOrderWhateverComesAndGoes() {
        List<Double> list = new ArrayList<>();
        Ascending values = Ascending.of(new double[0]);
        // Until pieces have been parted several times, then until most are empty and gone.
        for (int step = 0; step < 9 * Ascending.PIECE; step++) {
            boolean more = list.isEmpty() || random.nextInt(10) < (step < 6 * Ascending.PIECE ? 9 : 1);
            values = more ? added(list, values) : taken(list, values);
            if (step % 97 == 0) {
                assertSame(list, values);
            }
        }
        while (!list.isEmpty()) {
            values = taken(list, values);
        }
        assertSame(list, values);
        assertSame(list, added(list, values));
    }

    @Test
    void leavesWhatItWasMadeFromAsItWas() {
        double[] sorted = random.doubles(5 * Ascending.PIECE).sorted().toArray();
        Ascending before = Ascending.of(sorted.clone());

        before.without(3000).with(0, -1);

        assertThat(before.toArray()).containsExactly(sorted);
        assertThat(before.size()).isEqualTo(sorted.length);
    }

    /** Few different values, so that equal ones lie across pieces. */
    private Ascending added(List<Double> list, Ascending values) {
        double value = random.nextInt(500);
        int index = values.countBelow(value);
        list.add(value);
        Collections.sort(list);
        return values.with(index, value);
    }

    private Ascending taken(List<Double> list, Ascending values) {
        int index = random.nextInt(list.size());
        list.remove(index);
        return values.without(index);
    }

    private static void assertSame(List<Double> list, Ascending values) {
        assertThat(values.size()).isEqualTo(list.size());
        assertThat(values.toArray())
                .containsExactly(list.stream().mapToDouble(Double::doubleValue).toArray());
        for (int index = 0; index < list.size(); index += 61) {
            double value = list.get(index);
            assertThat(values.at(index)).isEqualTo(value);
            assertThat(values.countBelow(value)).isEqualTo(list.indexOf(value));
        }
        assertThat(values.countBelow(500)).isEqualTo(list.size());
    }
}
