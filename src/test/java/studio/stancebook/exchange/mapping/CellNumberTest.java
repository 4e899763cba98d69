package studio.stancebook.exchange.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellNumberTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2850|2850",
                " 2850.5 |2850.5",
                "2850,5|2850.5",
                "2590.7999999999997|2590.7999999999997",
                "1,234.5|1234.5",
                "1.234,5|1234.5",
                "1 234,5|1234.5",
                "1'234.5|1234.5",
                "2 850|2850",
                "2\u00a0850|2850",
                "2\u202f850|2850",
                "1,234,567|1234567",
                "1.234.567|1234567",
                "0,234|0.234",
                "2.850|2.850",
                "-12.5|-12.5",
                "\u221212,5|-12.5",
                "+3|3",
                ".5|.5"
            })
    void readsNumbersAsPeopleWriteThem(String text, BigDecimal number) {
        assertThat(CellNumber.of(text, false).number()).isEqualByComparingTo(number);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2850 mm|MM",
                "112.2 in|IN",
                "112.2\"|IN",
                "285 cm|CM",
                "2,85 m|M",
                "28°|DEG",
                "28 deg|DEG",
                "3000 lbs|LB",
                "1500 KG|KG"
            })
    void readsTheUnitBehindTheNumber(String text, ColumnUnit unit) {
        assertThat(CellNumber.of(text, false).unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "abc",
                "12 34",
                "1,23,456",
                "1.2.3",
                "12 parsecs",
                "1e3",
                "--1",
                "1-2",
                "NaN",
                "Infinity",
                "0x10",
                "1 234 mm mm",
                "1,234.567,8",
                "٣",
                "1111111111111111111111111111111111111111111111111111111111111111111111"
            })
    void readsNothingElse(String text) {
        CellNumber reading = CellNumber.of(text, false);

        assertThat(reading.number()).isNull();
        assertThat(reading.fault()).isNotNull();
    }

    @Test
    void doesNotDecideBetweenThousandsAndDecimals() {
        assertThat(CellNumber.of("2,850", false).number()).isNull();
        assertThat(CellNumber.of("2,850", false).fault()).isEqualTo("2,850 could be 2.85 or 2850: write 2850 or 2.85.");
    }

    /** An inch is 25.4 mm exactly (ISO 80000-3), so 102 in are 2590.8 mm and not 2590.7999999999997. */
    @Test
    void convertsInDecimal() {
        assertThat(ColumnUnit.IN.toKept(new BigDecimal("102"))).isEqualTo(2590.8);
        assertThat(ColumnUnit.CM.toKept(new BigDecimal("259.08"))).isEqualTo(2590.8);
        assertThat(ColumnUnit.M.toKept(new BigDecimal("2.5908"))).isEqualTo(2590.8);
        assertThat(ColumnUnit.MM.toKept(new BigDecimal("2590.8"))).isEqualTo(2590.8);
        assertThat(ColumnUnit.DEG_FROM_VERTICAL.toKept(new BigDecimal("60.5"))).isEqualTo(29.5);
    }

    /** A pound is 0.45359237 kg exactly (international yard and pound agreement of 1959; from memory). */
    @Test
    void convertsPounds() {
        assertThat(ColumnUnit.LB.toKept(new BigDecimal("1000"))).isEqualTo(453.59237);
    }
}
