package studio.stancebook.proposal.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Side;
import studio.stancebook.band.Verdict;
import studio.stancebook.dimension.Variable;
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.measure.MeasureUnit;
import studio.stancebook.moves.CarriedMove;
import studio.stancebook.moves.SingleMove;

class FindingWordsTest {

    private static final FindingWords WORDS = new FindingWords(messages());

    private static ResourceBundleMessageSource messages() {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("messages/proposal");
        messages.setDefaultEncoding("UTF-8");
        return messages;
    }

    private static SingleMove move(String variable, double change) {
        return new SingleMove(Variable.ofKey(variable).orElseThrow(), change, 0.01);
    }

    private static Finding finding(Verdict verdict, String... notes) {
        return new Finding("m", "M", MeasureUnit.DEG, 1, 31.0, 0.25, null, verdict, Arrays.asList(notes));
    }

    @ParameterizedTest
    @CsvSource({
        "wheelbase, -84.4, wheelbase \u221285\u00a0mm",
        "tyreDiameter, 22.6, tyre diameter +23\u00a0mm",
        "overallHeight, 4.52, overall height +4.6\u00a0mm",
        "screenAngle, -12.34, windscreen angle from the horizontal \u221212.4°",
        "cowl.x, -52, cowl 52\u00a0mm forward",
        "cowl.x, 52, cowl 52\u00a0mm rearward",
        "rockerFront.z, -16, front of the rocker 16\u00a0mm lower",
        "underbody.z, 0.25, underbody 0.25\u00a0mm higher",
        "hPoint.z, 3, H-point 3.0\u00a0mm higher"
    })
    void sayAMoveAsOneWouldAtTheBoard(String variable, double change, String words) {
        assertEquals(words, WORDS.move(move(variable, change), false));
    }

    @Test
    void nameEveryVariableThatCanBeMoved() {
        Variable.all().stream()
                .filter(Variable::movable)
                .forEach(variable -> WORDS.move(new SingleMove(variable, 1, 1), false));
    }

    @Test
    void sayByHowMuchAndAtMostThreeMoves() {
        Verdict outside = new Verdict.Outside(Side.LOW, 0.42, OptionalDouble.of(0.07));
        List<CarriedMove> moves = List.of(
                new CarriedMove(move("wheelbase", 10), GivesWay.LENGTH),
                new CarriedMove(move("cowl.x", 20), null),
                new CarriedMove(move("cowl.z", 30), null),
                new CarriedMove(move("overallWidth", 40), null));

        assertEquals(
                "0.42° below the band (7\u00a0% of its width). To the edge: wheelbase +10\u00a0mm (overall length with it), or cowl 20\u00a0mm rearward,"
                        + " or cowl 30\u00a0mm higher. (unloaded tyre)",
                WORDS.remark(finding(outside, "unloaded tyre"), moves, false));
        assertEquals("0.42° under", WORDS.over(finding(outside), OptionalDouble.of(700)));
    }

    @Test
    void sayWhenThereIsNoMoveAndNoWidth() {
        Verdict outside = new Verdict.Outside(Side.HIGH, 1.5, OptionalDouble.empty());

        assertEquals(
                "1.50° above the band. No single value brings it to the edge.",
                WORDS.remark(finding(outside), List.of(), false));
    }

    @Test
    void sayWhyItIsTooCloseOrNotMeasurable() {
        assertEquals("±0.50° reaches across an edge", WORDS.remark(finding(new Verdict.TooClose()), List.of(), false));
        assertEquals(
                "Needs the cowl point",
                WORDS.remark(
                        finding(new Verdict.NotMeasurable("Needs the cowl point", List.of("cowl"))), List.of(), false));
        assertEquals("", WORDS.remark(finding(new Verdict.Inside()), List.of(), false));
    }

    /** 0.42 of a wheel of 700 mm is 294 mm. */
    @Test
    void sayInMmHowFarALengthInWheelsIsOutside() {
        Verdict outside = new Verdict.Outside(Side.HIGH, 0.42, OptionalDouble.of(0.07));
        Finding wheels = new Finding(
                "cowl-height-in-wheels",
                "Cowl height in wheels",
                MeasureUnit.RATIO,
                2,
                1.9,
                0.01,
                null,
                outside,
                List.of());

        assertEquals("294\u00a0mm over", WORDS.over(wheels, OptionalDouble.of(700)));
        assertEquals("0.420 over", WORDS.over(wheels, OptionalDouble.empty()));
    }
}
