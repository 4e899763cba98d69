package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Contrast of the colours against each other, by the formula and the limits of WCAG 2.2: 4.5 for text (success
 * criterion 1.4.3), 3 for large text and for what one must see to use a control or read a mark (1.4.3, 1.4.11).
 */
class ContrastTest {

    private static final Path COMPONENTS = Path.of("src/main/resources/static/assets/css/components");

    /** The ends are WCAG's; 4.54 for #767676 on white is the grey that its technique G18 is commonly shown with, from memory. */
    @Test
    void isMeasuredByTheFormulaOfTheGuidelines() {
        assertEquals(21.0, Colours.contrast(0x000000, 0xffffff), 1e-9);
        assertEquals(1.0, Colours.contrast(0x336699, 0x336699), 1e-9);
        assertEquals(4.54, Colours.contrast(0x767676, 0xffffff), 0.005);
    }

    @Test
    void coversEveryColourOfTheSheet() throws Exception {
        Set<String> known = Set.of(
                "film",
                "paper",
                "grid",
                "grid-five",
                "tape",
                "ink",
                "soft",
                "ghost",
                "line",
                "edge",
                "red",
                "band",
                "blue",
                "line-a",
                "line-b",
                "line-c",
                "line-d",
                "line-e",
                "line-f");
        assertEquals(known, Colours.ofLight().all().keySet());
        assertEquals(known, Colours.ofDark().all().keySet());
    }

    @ParameterizedTest
    @CsvSource({
        "ink, film",
        "ink, paper",
        "ink, band",
        "soft, film",
        "soft, paper",
        "red, film",
        "red, paper",
        "tape, film",
        "tape, paper",
        "blue, film"
    })
    void letsTextBeRead(String text, String ground) throws Exception {
        for (Colours theme : List.of(Colours.ofLight(), Colours.ofDark())) {
            double contrast = theme.contrast(text, ground);
            assertTrue(contrast >= 4.5, text + " on " + ground + ": " + contrast);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "edge, film",
        "edge, paper",
        "tape, band",
        "red, band",
        "soft, band",
        "blue, film",
        "blue, paper",
        "line-a, film",
        "line-b, film",
        "line-c, film",
        "line-d, film",
        "line-e, film",
        "line-f, film"
    })
    void letsMarksAndControlsBeSeen(String mark, String ground) throws Exception {
        for (Colours theme : List.of(Colours.ofLight(), Colours.ofDark())) {
            double contrast = theme.contrast(mark, ground);

            assertTrue(contrast >= 3, mark + " on " + ground + ": " + contrast);
        }
    }

    /** Print is light on white paper, whatever the theme. */
    @ParameterizedTest
    @ValueSource(strings = {"ink", "soft", "red", "tape"})
    void letsTextBeReadOnPaper(String text) throws Exception {
        double contrast = Colours.contrast(Colours.ofLight().all().get(text), 0xffffff);

        assertTrue(contrast >= 4.5, text + " on white: " + contrast);
    }

    /** What is drawn through: the angles' names stand on their wedges, the profile of a large class on its band. */
    @Test
    void letsWhatLiesOnTintsBeSeen() throws Exception {
        double wedge = opacity("side-view", "wedge");
        double density = opacity("band-strip", "band-strip__density");
        for (Colours theme : List.of(Colours.ofLight(), Colours.ofDark())) {
            int tinted = theme.mixed("tape", wedge, "film");
            assertTrue(Colours.contrast(theme.all().get("soft"), tinted) >= 4.5, "soft on a wedge");
            for (String ground : List.of("film", "band")) {
                double contrast = Colours.contrast(
                        theme.mixed("soft", density, ground), theme.all().get(ground));
                assertTrue(contrast >= 3, "density on " + ground + ": " + contrast);
            }
        }
    }

    /** As the sheet has it, so that another opacity is held to the limits as well. */
    private static double opacity(String sheet, String component) throws Exception {
        Matcher found = Pattern.compile("\\." + component + " \\{[^}]*fill-opacity: ([0-9.]+);")
                .matcher(Files.readString(COMPONENTS.resolve(sheet + ".css")));
        assertTrue(found.find(), component);
        return Double.parseDouble(found.group(1));
    }

    /** Whatever a sheet gives to words is a colour that is read above, or stands on tape, or is as large as a heading. */
    @Test
    void coversEveryColourOfWords() throws Exception {
        Pattern rule = Pattern.compile("([^{}]+)\\{([^{}]*)}");
        Pattern colour = Pattern.compile("(?:^|[\\s;])(color|fill): var\\(--([a-z-]+)\\)");
        Set<String> read = Set.of("ink", "soft", "red", "tape");
        List<String> others = new ArrayList<>();
        int words = 0;
        try (Stream<Path> sheets = Files.walk(COMPONENTS.getParent())) {
            for (Path sheet : sheets.filter(Files::isRegularFile).toList()) {
                for (MatchResult one : rule.matcher(Files.readString(sheet).replaceAll("(?s)/\\*.*?\\*/", ""))
                        .results()
                        .toList()) {
                    Matcher given = colour.matcher(one.group(2));
                    boolean ofWords = one.group(1).matches("(?s).*(text|word).*");
                    while (given.find()) {
                        if (given.group(1).equals("color") || ofWords) {
                            words++;
                            boolean onTape = given.group(2).equals("film")
                                    && one.group(2).matches("(?s).*background: var\\(--(tape|red)\\).*");
                            boolean large = one.group(1).strip().equals(".refusal__status");
                            if (!read.contains(given.group(2)) && !onTape && !large) {
                                others.add(one.group(1).strip() + " " + given.group());
                            }
                        }
                    }
                }
            }
        }
        assertTrue(words > 60, "colours are looked for in the wrong way");
        assertEquals(List.of(), others);
    }
}
