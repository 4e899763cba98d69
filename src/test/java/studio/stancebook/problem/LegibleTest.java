package studio.stancebook.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Characters without a look (format characters, The Unicode Standard, 4.5 and 23; fillers, 21.1) in what is written on one line. */
class LegibleTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Inv\u00ADented",
                "Inv\u200Bented",
                "Inv\u2060ented",
                "\uFEFFInvented",
                "Inv\u200Dented",
                "Inv\u200Cented",
                "\u06A9\u200C",
                "\u200D\u06A9",
                "12\u200D34",
                "\u06A9\u200C\u200C\u06A9",
                "A\uDB40\uDC41",
                "\u3164",
                "Inv\u115Fented",
                "\u2800",
                "Inv\u034Fented"
            })
    void isNotOnALineWhenItCannotBeSeen(String text) {
        assertThat(Legible.isLine(text)).isFalse();
        assertThat(Legible.shown(text)).contains("?");
    }

    /** Persian with a non-joiner, Devanagari with a joiner (UAX #31, 2.3), a family emoji (UTS #51), a mark of direction. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645",
                "\u0915\u094D\u200D\u0937",
                "\uD83D\uDC69\u200D\uD83D\uDC67",
                "Invented \u200F\u05D0",
                "Grünwald 3"
            })
    void staysWhereJoinersShow(String text) {
        assertThat(Legible.isLine(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"soft\u00ADhyphen", "line\nbreak\u200B"})
    void isTakenInTextOfSeveralLines(String text) {
        assertThat(Legible.isText(text)).isTrue();
    }
}
