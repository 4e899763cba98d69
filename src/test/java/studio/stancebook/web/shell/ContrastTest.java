package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast of the colours against each other, by the formula and the limits of WCAG 2.2: 4.5 for text (success
 * criterion 1.4.3), 3 for large text and for what one must see to use a control or read a mark (1.4.3, 1.4.11).
 */
class ContrastTest {

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
}
