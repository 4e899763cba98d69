package studio.stancebook.exchange.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Edition;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.exchange.table.Cell;
import studio.stancebook.exchange.table.TableRow;
import studio.stancebook.geometry.Point;

class RowReaderTest {

    private static final Mapping SPLIT_TYRE = Rows.mapping(
            "id",
            "@name",
            "body",
            "@segment",
            "wb",
            "wheelbase in",
            "h",
            "overallHeight in",
            "tire",
            "tyre:size",
            "rim",
            "tyre:rim");

    private static final Mapping FIELDS = Rows.mapping(
            "id",
            "@name",
            "body",
            "@segment",
            "wb",
            "wheelbase",
            "year",
            "@modelYear",
            "origin",
            "@origin",
            "scale",
            "@scale",
            "edition",
            "@edition",
            "u",
            "@uncertainties",
            "o",
            "@origins");

    private static final Mapping SHAPE = Rows.mapping(
            "id",
            "@name",
            "body",
            "@segment",
            "wb",
            "wheelbase",
            "cx",
            "cowl:x",
            "cz",
            "cowl:z cm",
            "under",
            "underbody",
            "out",
            "outline",
            "out2",
            "outline:2",
            "screen",
            "screenAngle deg-from-vertical");

    private static DimensionSet set(RowReading reading) {
        assertThat(reading.draft()).as("%s", reading.problems().found()).isNotNull();
        return reading.draft().dimensions();
    }

    private static List<String> messages(RowReading reading) {
        return reading.problems().found().stream()
                .map(problem -> problem.severity().key() + " " + problem.column() + "=" + problem.value() + " "
                        + problem.message())
                .toList();
    }

    @Test
    void putsATyreTogetherFromSizeAndRim() {
        RowReading reading = Rows.strict(SPLIT_TYRE, Rows.row("1", "Small", "102", "47.5", "195/60", "R14"));

        assertThat(reading.draft().name()).isEqualTo("1");
        assertThat(reading.draft().segment()).isEqualTo("Small");
        assertThat(reading.draft().origin()).isEqualTo(Origin.SPECIFICATION);
        assertThat(set(reading).tyres().values())
                .extracting(tyre -> tyre.text())
                .containsExactly("195/60R14", "195/60R14");
        assertThat(set(reading).scalars())
                .containsEntry(Dimension.WHEELBASE, 2590.8)
                .containsEntry(Dimension.OVERALL_HEIGHT, 1206.5);
        assertThat(reading.problems().found()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "195/60,R14,195/60R14",
        "195/60,14,195/60R14",
        "195/60,r 14,195/60r14",
        "P195/60,R14,P195/60R14",
        "195/60R14,R14,195/60R14",
        "195/60R14,14,195/60R14",
        "195/60R14,'',195/60R14",
        "195/60,ZR15,195/60ZR15",
        "195,R14,195R14"
    })
    void joinsSizeAndRim(String size, String rim, String joined) {
        assertThat(TyreCells.joined(size, rim)).isEqualTo(joined);
    }

    @Test
    void leavesOutATyreWithoutAspectRatioWithAQueryOrKeepsTheRowOut() {
        TableRow row = Rows.row("40", "Small", "90", "52", "145", "R12");

        RowReading partial = Rows.partial(SPLIT_TYRE, row);
        RowReading strict = Rows.strict(SPLIT_TYRE, row);

        assertThat(set(partial).tyres()).isEmpty();
        assertThat(messages(partial)).hasSize(1).first().asString().startsWith("query tire, rim=145R12 ");
        assertThat(strict.draft()).isNull();
        assertThat(messages(strict)).hasSize(1).first().asString().startsWith("error tire, rim=145R12 ");
    }

    @Test
    void leavesOutARimWithoutASizeButNotAMissingTyre() {
        assertThat(messages(Rows.partial(SPLIT_TYRE, Rows.row("1", "Small", "90", "", "", "R12"))))
                .hasSize(1)
                .first()
                .asString()
                .contains("no size");
        assertThat(messages(Rows.partial(SPLIT_TYRE, Rows.row("1", "Small", "90", "NA", "-", ""))))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"'',Small,102,id,name", "1,'',102,body,segment", "1,Small,'',wb,wheelbase", "1,Small,NA,wb,wheelbase"})
    void alwaysRejectsARowWithoutNameSegmentOrWheelbase(
            String name, String segment, String wheelbase, String column, String missing) {
        RowReading reading = Rows.partial(SPLIT_TYRE, Rows.row(name, segment, wheelbase, "50", "", ""));

        assertThat(reading.draft()).isNull();
        assertThat(messages(reading)).containsExactly("error " + column + "= The row has no " + missing + ".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"abc", "1,234", "9", "900", "25 deg"})
    void alwaysRejectsAWheelbaseThatCannotBe(String wheelbase) {
        RowReading reading = Rows.partial(SPLIT_TYRE, Rows.row("1", "Small", wheelbase, "50", "", ""));

        assertThat(reading.draft()).isNull();
        assertThat(messages(reading)).hasSize(1).first().asString().startsWith("error wb=" + wheelbase);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tall", "5", "500"})
    void leavesOutAnOptionalValueThatCannotBe(String height) {
        RowReading partial = Rows.partial(SPLIT_TYRE, Rows.row("1", "Small", "102", height, "", ""));
        RowReading strict = Rows.strict(SPLIT_TYRE, Rows.row("1", "Small", "102", height, "", ""));

        assertThat(set(partial).scalars()).containsOnlyKeys(Dimension.WHEELBASE);
        assertThat(messages(partial)).hasSize(1).first().asString().startsWith("query h=" + height);
        assertThat(strict.draft()).isNull();
        assertThat(messages(strict)).hasSize(1).first().asString().startsWith("error h=" + height);
    }

    @Test
    void aCellMayNameItsOwnUnit() {
        assertThat(set(Rows.strict(SPLIT_TYRE, Rows.row("1", "Small", "2590.8 mm", "47,5", "", "")))
                        .scalars())
                .containsEntry(Dimension.WHEELBASE, 2590.8)
                .containsEntry(Dimension.OVERALL_HEIGHT, 1206.5);
    }

    @Test
    void readsTheFieldsOfASet() {
        RowReading reading = Rows.strict(
                FIELDS,
                Rows.row(
                        "'=1+1",
                        "Small",
                        "2.5",
                        "1990",
                        "Measured",
                        "unscaled",
                        "2009",
                        "wheelbase 0.25; cowl 3",
                        "cowl drawing"));

        assertThat(reading.draft().name()).isEqualTo("=1+1");
        assertThat(reading.draft().modelYear()).isEqualTo(1990);
        assertThat(reading.draft().origin()).isEqualTo(Origin.MEASURED);
        assertThat(set(reading).scale()).isEqualTo(Scale.UNSCALED);
        assertThat(set(reading).edition()).isEqualTo(Edition.J1100_2009);
        assertThat(set(reading).uncertainties()).isEqualTo(Map.of("wheelbase", 0.25, "cowl", 3.0));
        assertThat(set(reading).origins()).isEqualTo(Map.of("cowl", Origin.DRAWING));
        assertThat(set(reading).origin()).isEqualTo(Origin.MEASURED);
    }

    @Test
    void namesEveryFieldThatCannotBeRead() {
        RowReading reading = Rows.partial(
                FIELDS,
                Rows.row("1", "Small", "2500", "'90", "Japan", "big", "newest", "wheelbase -1; wing 3", "cowl guess"));

        assertThat(messages(reading))
                .extracting(message -> message.substring(0, message.indexOf('=')))
                .containsExactlyInAnyOrder(
                        "query year", "query origin", "query scale", "query edition", "query u", "query u", "query o");
        assertThat(reading.draft().origin()).isEqualTo(Origin.SPECIFICATION);
        assertThat(set(reading).uncertainties()).isEmpty();
    }

    @Test
    void readsLandmarksAndPolylinesAndSlopesFromTheVertical() {
        DimensionSet set = set(Rows.strict(
                SHAPE, Rows.row("1", "Small", "2500", "520", "116", "'-850 560; -600 330", "0 0; 1 1", "2 2", "60")));

        assertThat(set.landmarks()).isEqualTo(Map.of(Landmark.COWL, new Point(520, 1160)));
        assertThat(set.points(Polyline.UNDERBODY)).containsExactly(new Point(-850, 560), new Point(-600, 330));
        assertThat(set.points(Polyline.OUTLINE)).containsExactly(new Point(0, 0), new Point(1, 1), new Point(2, 2));
        assertThat(set.scalars()).containsEntry(Dimension.SCREEN_ANGLE, 30.0);
    }

    @Test
    void needsBothCoordinatesAndEnoughPoints() {
        RowReading reading =
                Rows.partial(SHAPE, Rows.row("1", "Small", "2500", "520", "", "0 0", "0 0; 1 1; x", "", ""));

        assertThat(set(reading).landmarks()).isEmpty();
        assertThat(set(reading).polylines()).isEmpty();
        assertThat(messages(reading))
                .extracting(message -> message.substring(0, message.indexOf('=')))
                .containsExactlyInAnyOrder("query cx, cz", "query under", "query out");
    }

    @Test
    void setsBothAxlesAtOnce() {
        Mapping mapping = Rows.mapping(
                "id", "@name", "body", "@segment", "wb", "wheelbase", "d", "tyreDiameter", "r", "rimDiameter in");

        assertThat(set(Rows.strict(mapping, Rows.row("1", "S", "2500", "650", "16")))
                        .scalars())
                .containsEntry(Axle.FRONT.tyreDiameter(), 650.0)
                .containsEntry(Axle.REAR.tyreDiameter(), 650.0)
                .containsEntry(Axle.FRONT.rimDiameter(), 406.4)
                .containsEntry(Axle.REAR.rimDiameter(), 406.4);
    }

    @Test
    void takesResultsOfFormulasWithOneQueryAndNoErrors() {
        Mapping mapping = Rows.mapping(
                "id",
                "@name",
                "body",
                "@segment",
                "wb",
                "wheelbase",
                "l",
                "overallLength",
                "w",
                "overallWidth",
                "h",
                "overallHeight");
        TableRow row = new TableRow(
                2,
                List.of(
                        Cell.ofText("a"),
                        Cell.ofText("S"),
                        new Cell("2500", Cell.CellKind.FORMULA),
                        new Cell("4000", Cell.CellKind.FORMULA),
                        new Cell("#DIV/0!", Cell.CellKind.ERROR),
                        new Cell("", Cell.CellKind.UNCOMPUTED)),
                null);

        RowReading reading = Rows.partial(mapping, row);

        assertThat(set(reading).scalars()).containsOnlyKeys(Dimension.WHEELBASE, Dimension.OVERALL_LENGTH);
        assertThat(messages(reading))
                .hasSize(3)
                .anySatisfy(message -> assertThat(message).startsWith("query w=#DIV/0!"))
                .anySatisfy(
                        message -> assertThat(message).startsWith("query h=").contains("not stored"))
                .anySatisfy(message ->
                        assertThat(message).startsWith("query wb, l=").contains("formula"));
    }

    @Test
    void rejectsARaggedRow() {
        RowReading reading = Rows.partial(FIELDS, new TableRow(3, List.of(), "The row has 0 cells."));

        assertThat(reading.draft()).isNull();
        assertThat(messages(reading)).containsExactly("error = The row has 0 cells.");
    }
}
