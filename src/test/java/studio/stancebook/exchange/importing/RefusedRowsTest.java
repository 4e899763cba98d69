package studio.stancebook.exchange.importing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import studio.stancebook.exchange.mapping.Guesses;
import studio.stancebook.exchange.mapping.Problems;
import studio.stancebook.exchange.mapping.RowReading;
import studio.stancebook.exchange.table.Cell;
import studio.stancebook.exchange.table.TableRow;

/** What spreadsheets act on: OWASP, "CSV Injection" (from memory). */
class RefusedRowsTest {

    @TempDir
    Path folder;

    private String table(List<String> headings, long room, RowReading... rows) throws Exception {
        Path file = folder.resolve("refused.csv");
        try (RefusedRows refused = new RefusedRows(file, headings, room)) {
            Arrays.stream(rows).forEach(refused::add);
        }
        return Files.readString(file);
    }

    private static RowReading row(String reason, String... cells) {
        Problems problems = new Problems(2, cells[0], false);
        problems.error("name", "", reason);
        problems.query("name", "", "only a question");
        TableRow source = new TableRow(2, Arrays.stream(cells).map(Cell::ofText).toList(), null);
        return new RowReading(2, null, problems, UnaryOperator.identity(), source);
    }

    @Test
    void hasTheReasonsBeforeTheCells() throws Exception {
        assertThat(table(List.of("name", "wheelbase"), 1000, row("No segment.", "Gull", "2500")))
                .isEqualTo("Refused because,name,wheelbase\r\nname: No segment.,Gull,2500\r\n");
    }

    @Test
    void leavesNoFormulaToASpreadsheetAndNoNumberWithAnApostrophe() throws Exception {
        assertThat(table(
                        List.of("=name", "a", "b", "c"), 1000, row("No.", "=1+1", "'=1+1", "-12.5", "+cmd|' /C x'!A0")))
                .isEqualTo("Refused because,'=name,a,b,c\r\nname: No.,'=1+1,'=1+1,-12.5,'+cmd|' /C x'!A0\r\n");
    }

    @Test
    void takesNoReasonsOfAnEarlierTableAlong() throws Exception {
        assertThat(table(List.of("refused because", "name"), 1000, row("No.", "old reason", "Gull")))
                .isEqualTo("Refused because,name\r\nname: No.,Gull\r\n");
    }

    @Test
    void endsWhereAFileMayBeNoLonger() throws Exception {
        RowReading[] rows = new RowReading[100];
        Arrays.fill(rows, row("No.", "x".repeat(100)));

        assertThat(table(List.of("name"), 1000, rows)).hasSizeLessThan(1100);
    }

    @Test
    void namesAColumnThatNobodyGuesses() {
        assertThat(Guesses.of(List.of(RefusedRows.HEADING), List.of(List.of())).get(0))
                .isEmpty();
    }
}
