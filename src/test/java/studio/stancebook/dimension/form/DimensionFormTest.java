package studio.stancebook.dimension.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.FieldError;

class DimensionFormTest {

    private static DimensionSet read(Map<String, String> parameters) {
        return DimensionForm.typed(parameters).read(Origin.DRAWING);
    }

    private static List<String> refusedFields(Map<String, String> parameters) {
        return assertThrows(ImpossibleDimensions.class, () -> read(parameters)).errors().stream()
                .map(FieldError::field)
                .toList();
    }

    @Test
    void givesBackTheSetItWasFilledFrom() {
        DimensionSet set = DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 2850.25)
                .set(Dimension.SCREEN_ANGLE, 31.5)
                .set(Landmark.COWL, -12.5, 1160)
                .set(Polyline.UNDERBODY, List.of(new Point(-850, 560), new Point(0.125, 300)))
                .uncertainty("wheelbase", 2)
                .uncertainty("cowl", 1.5)
                .origin("wheelbase", Origin.MEASURED)
                .build();

        assertEquals(set, DimensionForm.of(set).read(Origin.DRAWING));
    }

    /** 112.2 in = 2849.88 mm: the inch is 25.4 mm by definition. */
    @ParameterizedTest
    @CsvSource({"112.2 in, mm", "112.2, in", "2849.88, mm", "'2849,88 mm', in"})
    void readsLengthsInMillimetresAndInches(String text, String bareUnit) {
        DimensionSet set = read(Map.of("dimensions.wheelbase", text, "dimensions.bareUnit", bareUnit));

        assertEquals(2849.88, set.scalar(Dimension.WHEELBASE).orElseThrow());
    }

    @Test
    void turnsSlopesTypedFromTheVertical() {
        DimensionSet set = read(Map.of(
                "dimensions.wheelbase", "2700",
                "dimensions.screenAngle", "58",
                "dimensions.approachAngle", "20",
                "dimensions.anglesFrom", "vertical"));

        assertEquals(32, set.scalar(Dimension.SCREEN_ANGLE).orElseThrow());
        assertEquals(20, set.scalar(Dimension.APPROACH_ANGLE).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "520.5 1160\n-3 4",
                "520.5, 1160\r\n-3, 4",
                "[520.5, 1160]\n[-3, 4]",
                "520,5 1160\n\n\u22123 4\n",
                "520.5;1160\n-3;4",
                "520.5,1160\n-3,4"
            })
    void readsPointsAsPeopleWriteThem(String text) {
        DimensionSet set = read(Map.of("dimensions.wheelbase", "2700", "dimensions.underbody", text));

        assertEquals(List.of(new Point(520.5, 1160), new Point(-3, 4)), set.points(Polyline.UNDERBODY));
    }

    @Test
    void refusesEachInputByItsName() {
        List<String> fields = refusedFields(Map.of(
                "dimensions.wheelbase", "long",
                "dimensions.overallLength", "4 or 5",
                "dimensions.cowl.x", "520",
                "dimensions.underbody", "0 300\nnowhere\n900 300",
                "dimensions.origins.wheelbase", "rumour",
                "dimensions.uncertainties.cowl", "some"));

        assertEquals(
                List.of(
                        "dimensions.wheelbase",
                        "dimensions.overallLength",
                        "dimensions.cowl",
                        "dimensions.uncertainties.cowl",
                        "dimensions.underbody[1]",
                        "dimensions.origins.wheelbase"),
                fields);
    }

    @Test
    void asksForTheWheelbase() {
        assertEquals(List.of("dimensions.wheelbase"), refusedFields(Map.of("dimensions.overallHeight", "1500")));
    }

    @Test
    void keepsWhatWasTypedAndShowsWhatIsWrongBesideIt() {
        DimensionForm form = DimensionForm.typed(Map.of("dimensions.wheelbase", "long", "name", "Tern"))
                .with(List.of(new FieldError("dimensions.wheelbase", "No.")));

        Entry wheelbase = form.sections().get(0).entries().get(0);
        assertEquals("long", wheelbase.value());
        assertEquals("No.", wheelbase.error());
        assertEquals("dimensions-wheelbase", wheelbase.id());
        assertFalse(form.typed().containsKey("name"));
    }

    @Test
    void showsAnErrorOfOnePointAtItsLine() {
        DimensionForm form = DimensionForm.blank().with(List.of(new FieldError("dimensions.outline[2]", "No.")));

        Section lines = form.sections().get(form.sections().size() - 1);
        assertEquals(
                List.of("outline"),
                lines.lines().stream()
                        .filter(Entry::wrong)
                        .map(e -> e.name().substring(DimensionForm.PREFIX.length()))
                        .toList());
    }

    @Test
    void countsTheDoubtsThatAreTypedAndOpensThoseThatAreWrong() {
        DimensionForm form = DimensionForm.typed(Map.of("dimensions.uncertainties.wheelbase", "2"))
                .with(List.of(new FieldError("dimensions.origins.overallWidth", "No.")));

        Section lengths = section(form, "first");
        Section widths = section(form, "widths");
        assertEquals(1, lengths.doubtsUsed());
        assertFalse(lengths.doubtsWrong());
        assertEquals(0, widths.doubtsUsed());
        assertTrue(widths.doubtsWrong());
    }

    private static Section section(DimensionForm form, String key) {
        return form.sections().stream()
                .filter(section -> section.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void hasEveryDimensionInExactlyOneGroup() {
        Map<Dimension, Long> places = Arrays.stream(FormGroup.values())
                .flatMap(group -> group.dimensions().stream())
                .collect(Collectors.groupingBy(d -> d, Collectors.counting()));

        for (Dimension dimension : Dimension.values()) {
            assertNotNull(places.get(dimension), dimension + " is in no group");
            assertEquals(1L, places.get(dimension), dimension.key());
        }
    }

    @Test
    void takesOneTyreForBothAxlesUnlessTheRearOneDiffers() {
        Map<String, String> typed = Map.of("dimensions.wheelbase", "2850", "dimensions.frontTyre", "265/70R17");
        assertTrue(DimensionForm.typed(typed).read(Origin.DRAWING).sameTyresAllRound());

        Map<String, String> unknown = new HashMap<>(typed);
        unknown.put("dimensions.rearDiffers", "true");
        assertTrue(DimensionForm.typed(unknown)
                .read(Origin.DRAWING)
                .tyre(Axle.REAR)
                .isEmpty());

        Map<String, String> staggered = new HashMap<>(unknown);
        staggered.put("dimensions.rearTyre", "285/65R17");
        DimensionSet set = DimensionForm.typed(staggered).read(Origin.DRAWING);
        assertEquals("285/65R17", set.tyre(Axle.REAR).orElseThrow().text());
        assertEquals(set, DimensionForm.of(set).read(Origin.DRAWING));
    }

    @Test
    void writesTheSameTyreOnce() {
        DimensionSet set = DimensionForm.typed(
                        Map.of("dimensions.wheelbase", "2850", "dimensions.frontTyre", "265/70R17"))
                .read(Origin.DRAWING);
        DimensionForm form = DimensionForm.of(set);
        assertEquals("", form.text("dimensions.rearTyre"));
        assertEquals("", form.text("dimensions.rearDiffers"));
        assertEquals(set, form.read(Origin.DRAWING));
    }

    @Test
    void saysThatATyreIsWrongOnce() {
        ImpossibleDimensions wrong = assertThrows(
                ImpossibleDimensions.class,
                () -> DimensionForm.typed(Map.of("dimensions.wheelbase", "2850", "dimensions.frontTyre", "wide"))
                        .read(Origin.DRAWING));
        assertEquals(
                List.of("dimensions.frontTyre"),
                wrong.errors().stream().map(FieldError::field).toList());
    }

    /** "abc" in one field hid 18300 in the next. */
    @Test
    void hidesNothingBehindAValueThatCannotBeRead() {
        for (String unreadable : List.of("wheelbase", "overallHeight")) {
            Map<String, String> typed =
                    new HashMap<>(Map.of("dimensions.wheelbase", "2850", "dimensions.overallLength", "18300"));
            typed.put("dimensions." + unreadable, "abc");
            ImpossibleDimensions wrong = assertThrows(
                    ImpossibleDimensions.class, () -> DimensionForm.typed(typed).read(Origin.DRAWING));
            assertEquals(
                    Set.of("dimensions." + unreadable, "dimensions.overallLength"),
                    wrong.errors().stream().map(FieldError::field).collect(Collectors.toSet()));
        }
    }

    @Test
    void beginsALineOfTheSummaryWithTheNameOfItsField() {
        List<ErrorLink> links = ErrorLink.of(List.of(
                new FieldError("dimensions.overallLength", "18300 mm is outside the plausible range 1500 to 9000 mm."),
                new FieldError("dimensions.overallWidth", "Overall width must be above 0."),
                new FieldError("note", "A note is short.")));
        assertEquals(
                List.of(
                        "Overall length: 18300 mm is outside the plausible range 1500 to 9000 mm.",
                        "Overall width must be above 0.",
                        "A note is short."),
                links.stream().map(ErrorLink::message).toList());
    }
}
