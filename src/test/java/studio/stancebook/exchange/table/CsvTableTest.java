package studio.stancebook.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quoting and line ends: RFC 4180. */
class CsvTableTest {

    private static final String GERMAN = "Name;Radstand\r\nKöln 1;2.850,5\r\nMünchen;2700\r\n";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void findsTheDelimiter(String delimiter) throws IOException {
        Path file = TableFiles.text(folder, "a,b,c\n1,2,3\n4,5,6\n".replace(",", delimiter));

        assertThat(TableFiles.headings(file)).containsExactly("a", "b", "c");
        assertThat(TableFiles.read(file)).containsExactly(List.of("1", "2", "3"), List.of("4", "5", "6"));
    }

    @Test
    void isNotMisledByDecimalCommasOrByQuotedDelimiters() throws IOException {
        Path decimals = TableFiles.text(folder, "name;a;b\nx;1,5;2,5\ny;3,25;4\n");
        Path quoted = TableFiles.text(folder, "name,note\n\"a;b;c\",\"d;e\"\n\"f;g\",h\n");

        assertThat(TableFiles.headings(decimals)).containsExactly("name", "a", "b");
        assertThat(TableFiles.read(quoted)).containsExactly(List.of("a;b;c", "d;e"), List.of("f;g", "h"));
    }

    @Test
    void readsQuotesLineEndsWithinCellsAndDoubledQuotes() throws IOException {
        Path file = TableFiles.text(folder, "name,note\r\n\"two\r\nlines\",\"say \"\"so\"\"\"\r\nlast,row");

        assertThat(TableFiles.read(file))
                .containsExactly(List.of("two\r\nlines", "say \"so\""), List.of("last", "row"));
    }

    @Test
    void countsRowsAsAPersonDoesWithEmptyOnesAndTheHeading() throws IOException {
        Path file = TableFiles.text(folder, "name,note\n\nfirst,1\n,\n\"a\nb\",2\nlast,3\n");

        assertThat(TableFiles.rows(file)).extracting(TableRow::number).containsExactly(3L, 5L, 6L);
    }

    @ParameterizedTest
    @CsvSource({"UTF-8,''", "UTF-8,'\uFEFF'", "UTF-16LE,'\uFEFF'", "UTF-16BE,'\uFEFF'", "windows-1252,''"})
    void readsTheEncoding(String charset, String mark) throws IOException {
        Path file = TableFiles.text(folder, mark + GERMAN, Charset.forName(charset));

        assertThat(TableFiles.headings(file)).containsExactly("Name", "Radstand");
        assertThat(TableFiles.read(file)).containsExactly(List.of("Köln 1", "2.850,5"), List.of("München", "2700"));
    }

    @Test
    void namesTheLineOfBrokenUtf8() throws IOException {
        byte[] bytes = GERMAN.getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 4] = (byte) 0xFF;

        assertThatThrownBy(() -> TableFiles.read(TableFiles.bytes(folder, bytes)))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("Line 3")
                .hasMessageContaining("UTF-8");
    }

    @Test
    void refusesALetterCutOffAtTheEnd() throws IOException {
        Path file = TableFiles.bytes(folder, new byte[] {'K', (byte) 0xC3, (byte) 0xB6, ',', 'b', '\n', (byte) 0xE2});

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("Line 2");
    }

    /** 0x81 is none of Windows-1252 (its table at unicode.org leaves it undefined). */
    @Test
    void refusesBytesThatAreNoLettersInAnyEncodingKnown() throws IOException {
        Path file = TableFiles.bytes(folder, new byte[] {'a', ',', 'b', '\n', (byte) 0x81, ',', 'd', '\n'});

        assertThatThrownBy(() -> TableFiles.read(file)).isInstanceOf(UnreadableTable.class);
    }

    @Test
    void refusesUtf16WithHalfALetter() throws IOException {
        Path file = TableFiles.bytes(
                folder, new byte[] {(byte) 0xFF, (byte) 0xFE, 'a', 0, ',', 0, (byte) 0x3D, (byte) 0xD8, '\n', 0});

        assertThatThrownBy(() -> TableFiles.read(file)).isInstanceOf(UnreadableTable.class);
    }

    @Test
    void refusesANulByteNamingItsLine() throws IOException {
        Path file = TableFiles.text(folder, "name,a\nx,1\ny,\u00002\n");

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("Line 3")
                .hasMessageContaining("NUL");
    }

    @Test
    void reportsRaggedRowsAndReadsOn() throws IOException {
        Path file = TableFiles.text(folder, "a,b,c\n1,2\n1,2,3\n1,2,3,4\n1,2,3,\n");

        assertThat(TableFiles.rows(file))
                .extracting(row -> row.fault() == null ? "" : row.fault().substring(0, 36))
                .containsExactly(
                        "The row has 2 cells, the heading 3: ", "", "The row has 4 cells, the heading 3: ", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,b\n1,\"2\n3,4\n", "a,b\n1,\"2\"x\n"})
    void refusesABrokenQuotationNamingTheRow(String text) throws IOException {
        Path file = TableFiles.text(folder, text);

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("Row 2")
                .hasMessageContaining("quotation mark");
    }

    @Test
    void refusesAnEmptyFileAndAnEmptyHeading() throws IOException {
        assertThatThrownBy(() -> TableFiles.read(TableFiles.text(folder, ""))).hasMessageContaining("empty");
        assertThatThrownBy(() -> TableFiles.read(TableFiles.text(folder, ",,\n1,2,3\n")))
                .hasMessageContaining("Row 1 is empty");
    }

    @Test
    void refusesAHundredThousandColumns() throws IOException {
        Path file = TableFiles.text(folder, "a,".repeat(100_000) + "\n");

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("500 columns");
    }

    @Test
    void acceptsTheMostColumnsAndTheLongestCell() throws IOException {
        String long1 = "x".repeat(TableLimits.MOST_CHARACTERS_IN_CELL);
        Path file = TableFiles.text(folder, "h" + ",h".repeat(499) + "\n" + long1 + ",".repeat(499) + "\n");

        assertThat(TableFiles.headings(file)).hasSize(500);
        assertThat(TableFiles.read(file).get(0)).hasSize(500).startsWith(long1);
        assertThatThrownBy(() -> TableFiles.read(TableFiles.text(folder, "a,b\n" + long1 + "x,1\n")))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("row 2");
    }

    @Test
    void refusesARowTooLongThoughEachCellIsNot() throws IOException {
        String cell = "x".repeat(30_000);
        Path file = TableFiles.text(folder, "a" + ",a".repeat(39) + "\n" + cell + ("," + cell).repeat(39) + "\n");

        assertThatThrownBy(() -> TableFiles.read(file)).isInstanceOf(TableTooLarge.class);
    }

    /** Two thousand million characters without a line end: reading must stop near the longest cell allowed. */
    @ParameterizedTest
    @ValueSource(strings = {"", "\"", "a,b\n1,", "a,b\n1,\""})
    void stopsEarlyInALineWithoutEnd(String start) throws IOException {
        EndlessText text = new EndlessText(start, 2_000_000_000L);

        assertThatThrownBy(() -> {
                    try (CsvTable table = new CsvTable(text, ',', () -> 0)) {
                        table.next();
                    }
                })
                .isInstanceOf(TableTooLarge.class);
        assertThat(text.given).isLessThan(1_000_000);
    }

    @Test
    void tellsHowFarTheReadingIs() throws IOException {
        Path file = TableFiles.text(folder, "a,b\n" + "1,2\n".repeat(100_000));
        try (Table table = TableFile.of(file).open(null)) {
            double early = table.share();
            for (TableRow row = table.next(); row != null; row = table.next()) {
                assertThat(table.share()).isBetween(early, 1.0);
            }
            assertThat(early).isLessThan(0.5);
            assertThat(table.share()).isEqualTo(1);
        }
    }

    @Test
    void readsAsManyRowsAsTheMost() throws IOException {
        Reader text = new RepeatedLines("a,b\n", "1,2\n", TableLimits.MOST_ROWS);
        int rows = 0;
        try (CsvTable table = new CsvTable(text, ',', () -> 0)) {
            while (table.next() != null) {
                rows++;
            }
        }
        assertThat(rows).isEqualTo(TableLimits.MOST_ROWS);
    }

    @Test
    void refusesMoreRowsThanTheMost() throws IOException {
        Reader text = new RepeatedLines("a,b\n", "1,2\n", TableLimits.MOST_ROWS + 1);
        try (CsvTable table = new CsvTable(text, ',', () -> 0)) {
            assertThatThrownBy(() -> {
                        while (table.next() != null) {
                            // to the end
                        }
                    })
                    .isInstanceOf(TableTooLarge.class)
                    .hasMessageContaining("1000000 rows");
        }
    }

    /** Makes characters as they are asked for and counts them. */
    private static final class EndlessText extends Reader {

        private final StringReader start;
        private final long most;
        private long given;

        EndlessText(String start, long most) {
            this.start = new StringReader(start);
            this.most = most;
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            int n = start.read(buffer, offset, length);
            if (n < 0 && given < most) {
                java.util.Arrays.fill(buffer, offset, offset + length, 'x');
                n = length;
            }
            given += Math.max(n, 0);
            return n;
        }

        @Override
        public void close() {}
    }

    /** A heading, and then one line again and again. */
    private static final class RepeatedLines extends Reader {

        private final String line;
        private long left;
        private StringReader current;

        RepeatedLines(String heading, String line, long times) {
            this.line = line;
            this.left = times;
            this.current = new StringReader(heading);
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            int n = current.read(buffer, offset, length);
            while (n < 0 && left > 0) {
                int lines = (int) Math.min(left, 4096);
                left -= lines;
                current = new StringReader(line.repeat(lines));
                n = current.read(buffer, offset, length);
            }
            return n;
        }

        @Override
        public void close() {}
    }
}
