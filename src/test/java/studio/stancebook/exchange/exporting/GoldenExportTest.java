package studio.stancebook.exchange.exporting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.catalogue.IssueCause;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Edition;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.exchange.table.OwnFolder;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** Whole files, written by hand after RFC 4180 and the headings that the guide names. The packages are invented. */
class GoldenExportTest {

    private static final Instant THEN = Instant.parse("2026-01-02T03:04:05Z");

    private final Locale usual = Locale.getDefault();

    @TempDir
    Path folder;

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(usual);
    }

    private static PackageView view(String name, DimensionSet set, SetAside aside, Map<String, SetAside> values) {
        PackageIssue brought = new PackageIssue(1, IssueCause.BROUGHT_IN, null, "tire: left out?", THEN, null);
        PackageIssue found = new PackageIssue(2, IssueCause.FAR_FROM_CLASS, "wheelbase", "Far?", THEN, null);
        return new PackageView(
                1,
                0,
                name,
                "compact",
                "Compact",
                aside == null ? 1990 : null,
                set.origin(),
                set,
                aside,
                values,
                List.of(brought, found),
                THEN,
                "x",
                THEN,
                "x");
    }

    private static List<PackageView> invented() {
        DimensionSet full = DimensionSet.builder()
                .origin(Origin.MEASURED)
                .edition(Edition.J1100_2009)
                .tyre(Axle.FRONT, TyreDesignation.parse("265/70R17"))
                .set(Dimension.WHEELBASE, 2590.8)
                .set(Dimension.DASH_TO_AXLE, -120.5)
                .set(Dimension.DRIVEN_AXLES, 2)
                .set(Landmark.COWL, -20, 1160.25)
                .set(Polyline.UNDERBODY, List.of(new Point(-850, 560), new Point(3000, 300.125)))
                .uncertainty("wheelbase", 0.5)
                .uncertainty("cowl", 12)
                .origin("cowl", Origin.DRAWING)
                .build();
        DimensionSet sketch = DimensionSet.builder()
                .origin(Origin.DRAWING)
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 1234567.5)
                .build();
        SetAside aside = new SetAside("@home, \"really\"", "x", THEN);
        return List.of(view("=Ästhet, 1", full, null, Map.of("cowl", aside)), view("plain", sketch, aside, Map.of()));
    }

    private TableSpool spool() throws IOException {
        TableSpool spool = new TableSpool(new OwnFolder(folder));
        invented().forEach(spool::add);
        return spool;
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab"})
    void csvIsTheSameInEveryLocale(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Path file = folder.resolve("packages.csv");

        try (TableSpool spool = spool()) {
            CsvExport.write(spool, file);
        }

        assertThat(Files.readString(file))
                .isEqualTo(golden("packages.csv").replace("\r\n", "\n").replace("\n", "\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR"})
    void jsonIsTheSameInEveryLocale(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Path file = folder.resolve("packages.json");

        try (JsonExport json = new JsonExport(file)) {
            invented().forEach(json::add);
            json.finish();
        }

        assertThat(Files.readString(file)).isEqualTo(golden("packages.json").stripTrailing());
    }

    private static String golden(String name) throws IOException {
        try (InputStream in = GoldenExportTest.class.getResourceAsStream("/golden/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aWorkbookHoldsTextsAndNumbersButNoFormula() throws IOException {
        Path file = folder.resolve("packages.xlsx");
        try (TableSpool spool = spool()) {
            XlsxExport.write(spool, file);
        }

        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            Row first = workbook.getSheetAt(0).getRow(1);
            assertThat(first.getCell(0).getStringCellValue()).isEqualTo("'=Ästhet, 1");
            assertThat(first).extracting(Cell::getCellType).containsOnly(CellType.STRING, CellType.NUMERIC);
            assertThat(first).extracting(Cell::toString).contains("-120.5", "2590.8", "'-850 560; 3000 300.125");
        }
    }
}
