package studio.stancebook.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipException;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks written by Apache POI or, where it would not write them, by hand after ECMA-376. */
class XlsxTableTest {

    @TempDir
    Path folder;

    @Test
    void readsTextsAndNumbersAsTheyAreStored() throws IOException {
        Path file = TableFiles.workbook(
                folder,
                new Object[] {" Name ", "Wheelbase", "Yes"},
                new Object[] {"Köln", 2590.7999999999997, true},
                new Object[] {null, null, null},
                new Object[] {"say \"so\"", -0.5, null},
                new Object[] {"tiny", 1e-7, false});

        assertThat(TableFiles.headings(file)).containsExactly("Name", "Wheelbase", "Yes");
        assertThat(TableFiles.read(file))
                .containsExactly(
                        List.of("Köln", "2590.7999999999997", "TRUE"),
                        List.of("say \"so\"", "-0.5"),
                        List.of("tiny", "0.0000001", "FALSE"));
        assertThat(TableFiles.rows(file)).extracting(TableRow::number).containsExactly(2L, 4L, 5L);
    }

    @Test
    void readsInlineAndRichTextWithoutHowItIsReadAloud() throws IOException {
        try (SXSSFWorkbook inline = new SXSSFWorkbook()) {
            TableFiles.fill(inline.createSheet().createRow(0), "a", "b");
            TableFiles.fill(inline.getSheetAt(0).createRow(1), "x", 1);
            Path file = Files.createTempFile(folder, "inline", ".xlsx");
            try (OutputStream out = Files.newOutputStream(file)) {
                inline.write(out);
            }
            assertThat(TableFiles.read(file)).containsExactly(List.of("x", "1"));
        }
        Map<String, byte[]> parts = TableFiles.parts(
                "<worksheet><sheetData><row><c t=\"inlineStr\"><is><r><t>Rad</t></r><r><t>stand</t></r>"
                        + "<rPh><t>aloud</t></rPh></is></c></row></sheetData></worksheet>");
        assertThat(TableFiles.headings(TableFiles.zip(folder, parts))).containsExactly("Radstand");
    }

    @Test
    void takesTheStoredResultOfAFormulaAndSaysSo() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            TableFiles.fill(workbook.createSheet().createRow(0), "in", "mm", "bad", "new");
            Row row = workbook.getSheetAt(0).createRow(1);
            TableFiles.fill(row, 100);
            row.createCell(1).setCellFormula("A2*25.4");
            row.createCell(2).setCellFormula("A2/0");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            row.createCell(3).setCellFormula("A2*2");

            List<Cell> cells =
                    TableFiles.rows(TableFiles.save(folder, workbook)).get(0).cells();

            assertThat(cells.get(0)).isEqualTo(new Cell("100", Cell.CellKind.NUMBER));
            assertThat(cells.get(1)).isEqualTo(new Cell("2540", Cell.CellKind.FORMULA));
            assertThat(cells.get(2)).isEqualTo(new Cell("#DIV/0!", Cell.CellKind.ERROR));
            assertThat(cells.get(3).text()).isIn("", "0");
        }
    }

    @Test
    void readsANamedSheetAndNamesTheSheetsThereAre() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            TableFiles.fill(workbook.createSheet("Notes").createRow(0), "nothing");
            TableFiles.fill(workbook.createSheet("Cars & co").createRow(0), "name", "wheelbase");
            TableFile file = TableFile.of(TableFiles.save(folder, workbook));

            assertThat(file.sheets()).containsExactly("Notes", "Cars & co");
            try (Table table = file.open("Cars & co")) {
                assertThat(table.headings()).containsExactly("name", "wheelbase");
            }
            assertThatThrownBy(() -> file.open("Trucks"))
                    .isInstanceOf(UnreadableTable.class)
                    .hasMessageContaining("Notes, Cars & co");
        }
    }

    @Test
    void leavesNoFileBehind() throws IOException {
        Path file = TableFiles.workbook(folder, new Object[] {"a"}, new Object[] {"b"});

        TableFiles.read(file);

        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void refusesCellsBeyondTheColumnsButNotTheirStyles() throws IOException {
        Path styled = TableFiles.zip(
                folder,
                TableFiles.parts("<worksheet><sheetData><row r=\"1\"><c r=\"A1\" t=\"str\"><v>a</v></c>"
                        + "<c r=\"XFD1\" s=\"3\"/></row></sheetData></worksheet>"));
        Path filled = TableFiles.zip(
                folder,
                TableFiles.parts("<worksheet><sheetData><row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row></sheetData>"
                        + "</worksheet>"));

        assertThat(TableFiles.headings(styled)).containsExactly("a");
        assertThatThrownBy(() -> TableFiles.headings(filled))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("500");
    }

    @Test
    void marksARowThatReachesBeyondTheHeading() throws IOException {
        Path file = TableFiles.workbook(folder, new Object[] {"a", "b"}, new Object[] {"x", 1, 2}, new Object[] {"y"});

        assertThat(TableFiles.rows(file)).extracting(row -> row.fault() == null).containsExactly(false, true);
        assertThat(TableFiles.rows(file).get(0).fault()).contains("beyond column B");
    }

    @Test
    void refusesMacros() throws IOException {
        Map<String, byte[]> parts = TableFiles.parts("<worksheet/>");
        TableFiles.put(parts, "xl/vbaProject.bin", "macro");
        Path file = TableFiles.zip(folder, parts);

        assertThatThrownBy(() -> TableFile.of(file))
                .isInstanceOf(NotATable.class)
                .hasMessageContaining("macros")
                .hasMessageContaining("values only");
    }

    @Test
    void refusesLinksToOtherFiles() throws IOException {
        Map<String, byte[]> parts = TableFiles.parts("<worksheet/>");
        TableFiles.put(parts, "xl/externalLinks/externalLink1.xml", "<externalLink/>");
        Path file = TableFiles.zip(folder, parts);

        assertThatThrownBy(() -> TableFile.of(file))
                .isInstanceOf(NotATable.class)
                .hasMessageContaining("other files");
    }

    @Test
    void refusesOtherArchives() throws IOException {
        Path archive = TableFiles.zip(folder, Map.of("mimetype", "x".getBytes(StandardCharsets.UTF_8)));
        Map<String, byte[]> document = TableFiles.parts("<worksheet/>");
        document.remove("xl/workbook.xml");

        assertThatThrownBy(() -> TableFile.of(archive)).isInstanceOf(NotATable.class);
        assertThatThrownBy(() -> TableFile.of(TableFiles.zip(folder, document)))
                .isInstanceOf(NotATable.class)
                .hasMessageContaining("no workbook");
    }

    @Test
    void refusesAWorkbookThatIsCutOff() throws IOException {
        byte[] whole = Files.readAllBytes(TableFiles.workbook(folder, new Object[] {"a"}));
        Path file = TableFiles.bytes(folder, java.util.Arrays.copyOf(whole, whole.length / 2));

        assertThatThrownBy(() -> TableFile.of(file))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("cut off");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<worksheet><sheetData><row r=\"1\"><c><v>x</v></c></row></sheetData></worksheet>",
                "<worksheet><sheetData><row r=\"1\"><c t=\"s\"><v>7</v></c></row></sheetData></worksheet>",
                "<worksheet><sheetData><row r=\"1\"><c r=\"B1\"><v>1</v></c><c r=\"A1\"><v>1</v></c></row></sheetData></worksheet>",
                "<worksheet><sheetData><row r=\"x\"/></sheetData></worksheet>",
                "<worksheet><sheetData><row>",
                "<!DOCTYPE a [<!ENTITY b \"c\">]><worksheet><sheetData><row><c t=\"str\"><v>&b;</v></c></row></sheetData></worksheet>",
                "<worksheet><!-- comment --></worksheet>",
                "<?xml version=\"1.0\" encoding=\"IBM037\"?><worksheet/>",
                "<worksheet><?a b?><?c d?></worksheet>",
                ""
            })
    void refusesABrokenSheet(String sheet) throws IOException {
        Path file = TableFiles.zip(folder, TableFiles.parts(sheet));

        assertThatThrownBy(() -> TableFiles.read(file)).isInstanceOf(UnreadableTable.class);
    }

    @Test
    void refusesATagWithoutEnd() throws IOException {
        Path file = TableFiles.zip(folder, TableFiles.parts("<worksheet a=\"" + "> ".repeat(50_000) + "\"/>"));

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("tag");
    }

    /** 64 MB of nothing in 64 kB: the guard of the archive library must stay on. */
    @Test
    void refusesAZipBomb() throws IOException {
        String bomb = "<worksheet><sheetData><row r=\"1\"><c t=\"str\"><v>a</v></c></row></sheetData>"
                + " ".repeat(64 << 20) + "</worksheet>";
        Path file = TableFiles.zip(folder, TableFiles.parts(bomb));

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("zip bomb");
    }

    @Test
    void refusesABombAmongTheSharedStringsAndInTheDirectory() throws IOException {
        Map<String, byte[]> strings = TableFiles.parts("<worksheet/>");
        TableFiles.put(
                strings,
                "xl/_rels/workbook.xml.rels",
                "<Relationships><Relationship Id=\"r1\" Type=\"http://x/worksheet\" Target=\"worksheets/s.xml\"/>"
                        + "<Relationship Id=\"r2\" Type=\"http://x/sharedStrings\" Target=\"/xl/s.xml\"/></Relationships>");
        TableFiles.put(strings, "xl/s.xml", "<sst>" + "<si><t>a</t></si>".repeat(2_000_000) + "</sst>");
        Map<String, byte[]> directory = TableFiles.parts("<worksheet/>");
        TableFiles.put(directory, "xl/workbook.xml", "<workbook>" + " ".repeat(2 << 20) + "</workbook>");

        assertThatThrownBy(() -> TableFiles.read(TableFiles.zip(folder, strings)))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("zip bomb");
        assertThatThrownBy(() -> TableFile.of(TableFiles.zip(folder, directory)))
                .isInstanceOf(TableTooLarge.class);
    }

    @Test
    void refusesTooManyPartsAndTooLongACell() throws IOException {
        Map<String, byte[]> many = TableFiles.parts("<worksheet/>");
        for (int i = 0; i < 1001; i++) {
            many.put("a" + i, new byte[0]);
        }
        Path cell = TableFiles.zip(
                folder,
                TableFiles.parts("<worksheet><sheetData><row><c t=\"inlineStr\"><is><t>" + "ab c".repeat(10_000)
                        + "</t></is></c></row></sheetData></worksheet>"));

        assertThatThrownBy(() -> TableFile.of(TableFiles.zip(folder, many)))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("1000");
        assertThatThrownBy(() -> TableFiles.read(cell)).isInstanceOf(TableTooLarge.class);
    }

    @Test
    void tellsHowFarTheReadingIs() throws IOException {
        Object[][] rows = new Object[5000][];
        java.util.Arrays.setAll(rows, i -> new Object[] {"name " + i, i});
        Path file = TableFiles.workbook(folder, rows);
        try (Table table = TableFile.of(file).open(null)) {
            double early = table.share();
            while (table.next() != null) {
                assertThat(table.share()).isBetween(early, 1.0);
            }
            assertThat(early).isLessThan(0.5);
            assertThat(table.share()).isEqualTo(1);
        }
    }

    @Test
    void readsRichTextWhole() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            XSSFRichTextString rich = new XSSFRichTextString("Rad");
            rich.append("stand", workbook.createFont());
            workbook.createSheet().createRow(0).createCell(0).setCellValue(rich);

            assertThat(TableFiles.headings(TableFiles.save(folder, workbook))).containsExactly("Radstand");
        }
    }

    /** 1.8 MB of such a file were 20 million elements, each of which a parser keeps until its end. */
    @Test
    void refusesElementsNestedWithoutEnd() throws IOException {
        String deep = "<worksheet>" + "<a>".repeat(100_000);
        String spaces = "<worksheet>" + "<a xmlns:b=\"c\">".repeat(100_000);

        for (String sheet : List.of(deep, spaces)) {
            Path file = TableFiles.zip(folder, TableFiles.parts(sheet));
            assertThatThrownBy(() -> TableFiles.read(file))
                    .isInstanceOf(UnreadableTable.class)
                    .hasMessageContaining("nested more than 64 deep");
        }
    }

    @Test
    void readsElementsSideBySideHoweverMany() throws IOException {
        String sheet = "<worksheet><sheetData><row><c t=\"str\"><v>a</v></c></row>"
                + "<row><x/><x  /><x a=\"/\"></x></row>".repeat(500) + "</sheetData></worksheet>";

        assertThat(TableFiles.read(TableFiles.zip(folder, TableFiles.parts(sheet))))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"<n%d/>", "<n n%d=\"\"/>", "<n\n\t\tn%d = 'x'></n>"})
    void refusesNamesWithoutEnd(String element) throws IOException {
        StringBuilder sheet = new StringBuilder("<worksheet>");
        for (int i = 0; i < 2100; i++) {
            sheet.append(element.formatted(i));
        }
        Path file = TableFiles.zip(
                folder, TableFiles.parts(sheet.append("</worksheet>").toString()));

        assertThatThrownBy(() -> TableFiles.read(file))
                .isInstanceOf(UnreadableTable.class)
                .hasMessageContaining("more than 2000 different names");
    }

    @Test
    void stopsReadingWhenItsTimeIsOver() throws IOException {
        Path file = TableFiles.workbook(folder, new Object[] {"a"}, new Object[] {"b"});
        ReadingTime over = new ReadingTime(Duration.ofNanos(1));

        assertThatThrownBy(() -> XlsxTable.open(file, null, over))
                .isInstanceOf(TableTooLarge.class)
                .hasMessageContaining("takes longer than");
    }

    @Test
    void stopsReadingWhenItsThreadIsToStop() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> new ReadingTime().check()).hasMessageContaining("was stopped");
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }

    @Test
    void blamesNoWorkbookForAFullDiskOrAFaultOfOurs() {
        RuntimeException fullDisk = new UncheckedIOException(new IOException("No space left on device"));
        RuntimeException ours = new IllegalStateException("ours");

        assertThat(WorkbookXml.refusal("s.xml", fullDisk)).isSameAs(fullDisk);
        assertThat(WorkbookXml.refusal("s.xml", ours)).isSameAs(ours);
        assertThat(WorkbookXml.refusal("s.xml", new ZipException("invalid block type")))
                .isInstanceOf(UnreadableTable.class);
    }
}
