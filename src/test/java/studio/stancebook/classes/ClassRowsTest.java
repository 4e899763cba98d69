package studio.stancebook.classes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import studio.stancebook.statistics.SortedColumn;

class ClassRowsTest {

    private static final int MEASURES = 3;

    private final Random random = new Random(7);

    private ClassRow row(long id) {
        double[] values = new double[MEASURES];
        values[0] = random.nextInt(50);
        values[1] = random.nextBoolean() ? Double.NaN : random.nextDouble();
        values[2] = Double.NaN;
        return new ClassRow(id, "Package " + id + " ü€", random.nextInt(3) * 1000, random.nextInt(4), values);
    }

    private static List<String> told(ClassRows rows) {
        List<String> told = new ArrayList<>();
        rows.forEach((block, row) -> told.add(text(block.row(row))));
        return told;
    }

    private static String text(ClassRow row) {
        return row.id() + row.name() + row.modelYear() + row.origin() + Arrays.toString(row.values());
    }

    /** Against a sorted map, over classes that fill several blocks, with changes in all places. */
    @Test
    void holdWhatAMapWouldHoldAfterAnyChanges() {
        Map<Long, ClassRow> model = new TreeMap<>();
        ClassRows rows = ClassRows.none(MEASURES);
        SortedColumn column = SortedColumn.empty();
        for (int step = 0; step < 120; step++) {
            ClassChange change = anyChange(step);
            change.departed().forEach(model::remove);
            change.rows().forEach(model::put);
            ClassUpdate update = new ClassUpdate();
            rows = rows.changed(change, update);
            SortedColumn updated = update.updated(column, 0);
            column = updated == null ? SortedColumn.of(rows.values(0)) : updated;

            assertThat(rows.size()).isEqualTo(model.size());
            assertThat(told(rows))
                    .isEqualTo(model.values().stream().map(ClassRowsTest::text).toList());
            assertThat(column).isEqualTo(SortedColumn.of(rows.values(0)));
        }
        assertThat(model.size()).isGreaterThan(2 * ClassRows.MOST_IN_BLOCK);
    }

    private ClassChange anyChange(int step) {
        int many = step % 10 == 0 ? 400 : 1 + random.nextInt(20);
        List<ClassRow> came = new ArrayList<>();
        List<Long> departed = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            came.add(row(random.nextInt(4000)));
            departed.add((long) random.nextInt(step % 3 == 0 ? 4000 : 1));
        }
        return ClassChange.of(came, departed);
    }

    @Test
    void areUntouchedByAChangeMadeToThem() {
        ClassRows before =
                ClassRows.none(MEASURES).changed(ClassChange.rows(List.of(row(1), row(2))), new ClassUpdate());
        List<String> told = told(before);

        before.changed(ClassChange.of(List.of(row(2), row(3)), List.of(1L)), new ClassUpdate());

        assertThat(told(before)).isEqualTo(told);
    }

    @Test
    void giveNoValueOfAMeasureThatNobodyHas() {
        ClassRows rows = ClassRows.none(MEASURES).changed(ClassChange.rows(List.of(row(1), row(2))), new ClassUpdate());

        assertThat(rows.values(2)).isEmpty();
        assertThat(ClassRows.none(MEASURES).values(0)).isEmpty();
    }
}
