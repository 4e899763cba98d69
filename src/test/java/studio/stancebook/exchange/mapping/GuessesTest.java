package studio.stancebook.exchange.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes: SAE J1100, as the table of dimensions has them. */
class GuessesTest {

    private static String guess(String heading, String... samples) {
        return shown(Guesses.of(List.of(heading), List.of(List.of(samples))).get(0));
    }

    private static String shown(Optional<Guess> guess) {
        return guess.map(g -> g.target().id().replace("dimension:", "") + " "
                        + (g.unit() == null ? "?" : g.unit().key()))
                .orElse("none")
                .strip();
    }

    @ParameterizedTest
    @CsvSource({
        "Name,field:name",
        "Vehicle,field:name",
        "Segment,field:segment",
        "Model year,field:modelYear",
        "wheelbase_in,wheelbase in",
        "Wheelbase (mm),wheelbase mm",
        "WHEELBASE,wheelbase mm",
        "Wheel base [cm],wheelbase cm",
        "L101,wheelbase mm",
        "L101 (in),wheelbase in",
        "L101 Wheelbase,wheelbase mm",
        "L103 [in],overallLength in",
        "length_in,overallLength in",
        "Overall length / mm,overallLength mm",
        "W103,overallWidth mm",
        "H100 mm,overallHeight mm",
        "Front overhang,frontOverhang mm",
        "overallHeight [mm],overallHeight mm",
        "front track,frontTrack mm",
        "Front track (mm),frontTrack mm",
        "Approach angle,approachAngle deg",
        "Breakover angle (°),rampAngle deg",
        "Curb weight (lb),kerbMass lb",
        "Tire,tyre",
        "Tyre size,tyre",
        "front tyre,frontTyre",
        "rearTyre,rearTyre",
        "tyre diameter,tyreDiameter mm",
        "cowl x [mm],cowl:x mm",
        "hPoint z [mm],hPoint:z mm",
        "underbody [mm],underbody mm",
        "outline 2 [mm],outline:2 mm",
        "screenAngle [deg],screenAngle deg",
        "Windscreen angle from the horizontal,screenAngle deg",
        "uncertainties,field:uncertainties",
        "valuesSetAside,field:valuesSetAside",
        "drivenAxles,drivenAxles"
    })
    void knowsTheWordsOfTheTrade(String heading, String guess) {
        assertThat(guess(heading)).isEqualTo(guess);
    }

    /** Headings as designers shorten them in tables of their own: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "Car,field:name",
        "Model,field:name",
        "Car / model,field:name",
        "Veh. name,field:name",
        "Seg,field:segment",
        "Yr,field:modelYear",
        "M/Y,field:modelYear",
        "Mdl yr,field:modelYear",
        "WB,wheelbase mm",
        "W/B,wheelbase mm",
        "W.B. (in),wheelbase in",
        "WheelBase_in,wheelbase in",
        "O/A Lth,overallLength mm",
        "Len [mm],overallLength mm",
        "L (mm),overallLength mm",
        "F/OH,frontOverhang mm",
        "Frt O/H,frontOverhang mm",
        "F.O.H.,frontOverhang mm",
        "OH front [in],frontOverhang in",
        "R/OH,rearOverhang mm",
        "Rr O/hang (in),rearOverhang in",
        "Ht_in,overallHeight in",
        "O/A H,overallHeight mm",
        "Hgt mm,overallHeight mm",
        "Wdth,overallWidth mm",
        "Car width (in),overallWidth in",
        "Trk F,frontTrack mm",
        "R trk_in,rearTrack in",
        "Track (rear) mm,rearTrack mm",
        "Tyre F,frontTyre",
        "Tire R,rearTyre",
        "Frt tire size,frontTyre",
        "Tyre dia. [in],tyreDiameter in",
        "F tyre OD (mm),frontTyreDiameter mm",
        "Gnd clr,groundClearance mm",
        "Min gnd clearance_in,groundClearance in",
        "Frt axle clr,frontAxleClearance mm",
        "App angle,approachAngle deg",
        "App (deg),approachAngle deg",
        "Dep. ang. °,departureAngle deg",
        "B/over ang,rampAngle deg",
        "Kerb wt (kg),kerbMass kg",
        "Curb wt_lb,kerbMass lb"
    })
    void readsWhatDesignersShorten(String heading, String guess) {
        assertThat(guess(heading)).isEqualTo(guess);
    }

    /** Common practice, no source. */
    @Test
    void readsAWholeTableOfShortHeadings() {
        List<String> headings =
                List.of("Car", "Yr", "Seg", "W/B", "F/OH", "R/OH", "Ht_in", "Tyre F", "Tyre R", "Gnd clr");

        assertThat(Guesses.of(headings, Collections.nCopies(headings.size(), List.of())))
                .extracting(GuessesTest::shown)
                .containsExactly(
                        "field:name",
                        "field:modelYear",
                        "field:segment",
                        "wheelbase mm",
                        "frontOverhang mm",
                        "rearOverhang mm",
                        "overallHeight in",
                        "frontTyre",
                        "rearTyre",
                        "groundClearance mm");
    }

    /** What more than one thing is shortened to, or what is none of ours: common practice, no source. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "F",
                "R",
                "L",
                "W",
                "H",
                "OH",
                "App",
                "Dep",
                "Trk",
                "Clr",
                "Wt",
                "Wt (kg)",
                "Dia",
                "Wheel dia",
                "Rim F",
                "Make",
                "Car type",
                "Car no.",
                "GC",
                "F gnd clr",
                "Rear seat H",
                "Ht to roof rails",
                "Wdth w/o mirrors",
                "F/OH ratio",
                "R/OH incl. tow bar",
                "Tyre press. F",
                "Tyre wdth",
                "A/D angle",
                "Ride ht",
                "WB (kg)",
                "Yr (mm)",
                "W/B deg",
                "Dep. time"
            })
    void leavesShortHeadingsToAPersonWhereUnsure(String heading) {
        assertThat(guess(heading)).isEqualTo("none");
    }

    @Test
    void takesNoTwoShortHeadingsForTheSame() {
        assertThat(Guesses.of(List.of("Car", "Model", "Ht", "H100", "WB"), Collections.nCopies(5, List.of())))
                .extracting(GuessesTest::shown)
                .containsExactly("none", "none", "none", "none", "wheelbase mm");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Type",
                "W101",
                "W102",
                "L101 length",
                "L103 wheelbase",
                "weight_lb",
                "rim",
                "screen angle",
                "Windscreen angle",
                "Width (mirrors folded)",
                "Front headroom",
                "wheelbase deg",
                "approach angle mm",
                "segment mm",
                "cowl",
                "Price",
                "L1"
            })
    void doesNotGuessWhereUnsure(String heading) {
        assertThat(guess(heading)).isEqualTo("none");
    }

    @Test
    void takesTheUnitFromTheCellsWhereOnlyOneFits() {
        assertThat(guess("Wheelbase", "2,59", "2.71")).isEqualTo("wheelbase m");
        assertThat(guess("Wheelbase", "2590", "2710")).isEqualTo("wheelbase mm");
        assertThat(guess("Wheelbase", "98", "95")).isEqualTo("wheelbase in");
        assertThat(guess("Wheelbase", "102", "104")).as("cm or in").isEqualTo("wheelbase ?");
        assertThat(guess("Wheelbase", "102", "98")).isEqualTo("wheelbase in");
    }

    @Test
    void takesAnOriginForOneOnlyWhereTheCellsAre() {
        assertThat(guess("origin", "measured", "Drawing")).isEqualTo("field:origin");
        assertThat(guess("Source", "Japan", "Germany")).isEqualTo("none");
    }

    @Test
    void splitsATyreWhereThereIsARimBesideIt() {
        List<String> headings = List.of("tire", "rim");

        assertThat(Guesses.of(headings, List.of(List.of("195/60"), List.of("R14"))))
                .extracting(GuessesTest::shown)
                .containsExactly("tyre:size", "tyre:rim");
        assertThat(Guesses.of(headings, List.of(List.of("195/60R14"), List.of("R14"))))
                .extracting(GuessesTest::shown)
                .containsExactly("tyre", "none");
    }

    @Test
    void leavesTwoColumnsOfTheSameToAPerson() {
        List<List<String>> samples = Collections.nCopies(3, List.of());

        assertThat(Guesses.of(List.of("length", "L103", "width"), samples))
                .extracting(GuessesTest::shown)
                .containsExactly("none", "none", "overallWidth mm");
        assertThat(Guesses.of(List.of("tyre", "front tyre", "rear tyre"), samples))
                .extracting(GuessesTest::shown)
                .containsExactly("none", "none", "none");
    }

    @Test
    void makesAMappingUnlessAUnitIsInDoubt() {
        List<String> headings = List.of("name", "segment", "wheelbase", "colour");
        List<List<String>> clear = List.of(List.of(), List.of(), List.of("2500"), List.of());
        List<List<String>> unclear = List.of(List.of(), List.of(), List.of("102"), List.of());

        assertThat(Guesses.mapping(headings, Guesses.of(headings, clear)).uses())
                .hasSize(3);
        assertThatThrownBy(() -> Guesses.mapping(headings, Guesses.of(headings, unclear)))
                .isInstanceOf(ImpossibleMapping.class)
                .hasMessageContaining("\"wheelbase\"");
    }
}
