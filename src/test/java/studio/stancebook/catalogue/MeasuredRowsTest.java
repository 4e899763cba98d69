package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import studio.stancebook.classes.ClassRow;
import studio.stancebook.classes.RowBlock;

/** Pages of sorted packages against the whole list sorted by the library. */
class MeasuredRowsTest {

    private record Row(long id, double first, double second) {}

    private static List<Row> rows(int count) {
        Random random = new Random(11);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double first = random.nextInt(10) == 0 ? Double.NaN : random.nextInt(40) - 20;
            rows.add(new Row(1 + i, first == 0 && random.nextBoolean() ? -0.0 : first, random.nextInt(3)));
        }
        return rows;
    }

    /** Without a value last in either direction, as SQL has it with NULLS LAST. */
    private static Comparator<Row> order(boolean ascending) {
        Comparator<Row> byFirst = Comparator.comparingDouble(row ->
                Double.isNaN(row.first) ? Double.POSITIVE_INFINITY : ascending ? row.first + 0.0 : 0.0 - row.first);
        return byFirst.thenComparingDouble(Row::second).thenComparingLong(Row::id);
    }

    @ParameterizedTest
    @CsvSource({"0,true", "1,true", "1,false", "3000,true", "3000,false"})
    void giveThePagesOfTheWholeOrder(int count, boolean ascending) {
        List<Row> all = rows(count);
        MeasuredRows found = new MeasuredRows(2);
        for (Row row : all) {
            found.add(block(row.id(), "Invented"), 0);
            found.key(0, row.first(), ascending);
            found.key(1, row.second(), true);
        }
        List<Long> expected = all.stream().sorted(order(ascending)).map(Row::id).toList();

        Comparator<Integer> order = found.byKey(0).thenComparing(found.byKey(1)).thenComparingLong(found::id);
        List<Long> paged = new ArrayList<>();
        List<Long> pagedByFirstKey = new ArrayList<>();
        for (int from = 0; from <= count; from += 70) {
            paged.addAll(found.page(from, 70, order));
            pagedByFirstKey.addAll(found.pageByFirstKey(from, 70, order));
        }

        assertThat(paged).isEqualTo(expected);
        assertThat(pagedByFirstKey).isEqualTo(expected);
        assertThat(found.ids()).hasSize(count).isSorted();
    }

    /** Against the order of code points, which the library gives for strings without surrogates. */
    @Test
    void areSortedByName() {
        List<String> names = List.of("Tern 2", "Tern 10", "tern", "", "Ö", "O", "Tern", "山", "Tern 2a");
        MeasuredRows found = new MeasuredRows(0);
        for (int i = 0; i < names.size(); i++) {
            found.add(block(i, names.get(i)), 0);
        }

        assertThat(found.page(0, 100, found.byName()))
                .extracting(id -> names.get(id.intValue()))
                .isEqualTo(names.stream().sorted().toList());
    }

    private static RowBlock block(long id, String name) {
        return RowBlock.of(List.of(new ClassRow(id, name, 0, 0, new double[0])), 0);
    }
}
