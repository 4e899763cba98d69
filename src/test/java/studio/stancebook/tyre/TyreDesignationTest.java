package studio.stancebook.tyre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreDesignationTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "265/70R17; 265/70R17",
                "  p265 / 70 r 17   113s ; P265/70R17 113S",
                "lt235/85r16 120/116r; LT235/85R16 120/116R",
                "ST205/75D15; ST205/75D15",
                "T125/70D15 95M; T125/70D15 95M",
                "HL245/40R19 101Y; HL245/40R19 101Y",
                "225/45ZR17 (94Y); 225/45ZR17 (94Y)",
                "225/45 ZR17 (94Y) XL; 225/45ZR17 (94Y) XL",
                "245/40ZRF19 98Y; 245/40ZRF19 98Y",
                "205/60HR15; 205/60HR15",
                "195/75R16C 107/105R; 195/75R16C 107/105R",
                "225/75R16LT; 225/75R16LT",
                "LT245/75R16/E; LT245/75R16/E",
                "245/70R19.5 136/134M; 245/70R19.5 136/134M",
                "205/65-10; 205/65-10",
                "265/70R17 115; 265/70R17 115",
                "235/60R18 107V XL M+S; 235/60R18 107V XL M+S",
                "35x12.50R17LT; 35x12.50R17LT",
                "35X12.5R17LT 121R; 35x12.50R17LT 121R",
                "35 x 12.50 R 17 LT; 35x12.50R17LT",
                "31\u00d710.50-15LT; 31x10.50-15LT",
                "33x12.50r20lt/c; 33x12.50R20LT/C",
                "LT35x12.50R17; 35x12.50R17"
            })
    void readsOneSpellingIntoTheCanonicalOne(String written, String canonical) {
        TyreDesignation read = TyreDesignation.parse(written);

        assertEquals(canonical, read.text());
        assertEquals(read, TyreDesignation.parse(canonical));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "tyre",
                "265-70-17",
                "265/70",
                "265/70R",
                "265/70R17.3",
                "265/70R170",
                "265/70R17 91X",
                "265/70R17 (91V",
                "265/70R17 91V 91V 91V 91V 91V 91V",
                "265/70Q17",
                "1265/70R17",
                "35x12.50R33LT",
                "35x12,50R17LT",
                "35x12.505R17LT",
                "265/70R17\n<script>"
            })
    void refusesWhatIsNoSize(String text) {
        assertThrows(UnknownTyreDesignation.class, () -> TyreDesignation.parse(text));
    }

    @ParameterizedTest
    @CsvSource({
        "100/70R17, section width 100 mm, 105 to 455 mm",
        "460/70R17, section width 460 mm, 105 to 455 mm",
        "205/15R16, aspect ratio 15, 20 to 100",
        "205/105R16, aspect ratio 105, 20 to 100",
        "205/55R7, rim code 7, 8 to 30",
        "205/55R31, rim code 31, 8 to 30",
        "19x8.50R10, overall diameter 19 inches, 20 to 54 inches",
        "35x20.5R17, section width 20.5 inches, 4 to 20 inches"
    })
    void refusesANumberOutsideItsRangeAndNamesBoth(String text, String value, String accepted) {
        String message = assertThrows(UnknownTyreDesignation.class, () -> TyreDesignation.parse(text))
                .detail();

        assertTrue(message.contains("'" + text + "'"), message);
        assertTrue(message.contains(value), message);
        assertTrue(message.contains(accepted), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"105/20R8", "455/100R30", "20x4R16", "54x20R30"})
    void acceptsTheEndsOfTheRanges(String text) {
        assertTrue(TyreDesignation.parse(text).sectionHeightMm() > 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"185R14", "175 SR 13", "6.00-16", "7.50R16 LT", "185R14C 102/100Q"})
    void asksForTheAspectRatioOfAnOldSize(String text) {
        String message = assertThrows(UnknownTyreDesignation.class, () -> TyreDesignation.parse(text))
                .detail();

        assertTrue(message.contains("no aspect ratio"), message);
        assertTrue(message.contains("give the aspect ratio"), message);
    }

    @Test
    void roundsTheSectionHeightHalfUpBeforeDoubling() {
        // 245 x 0.70 = 171.5: 172, so 406 + 344 and not 406 + 343
        assertEquals(750, TyreDesignation.parse("245/70R16").overallDiameterMm());
    }

    @Test
    void givesTheSidewallOfAFlotationSizeFromItsNominalDiameter() {
        // 35 x 25.4 = 889; (889 - 432) / 2 = 228.5
        assertEquals(228.5, TyreDesignation.parse("35x12.50R17LT").sectionHeightMm(), 1e-9);
    }

    @Test
    void takesTheDesignDiameterOfAMetricSizeAsTheTabulatedOne() {
        assertEquals(
                804, TyreDesignation.parse("265/70R17").tabulatedDiameterMm().orElseThrow());
    }

    @Test
    void readsAndWritesAlikeInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals("LT245/70R19.5", TyreDesignation.parse("lt245/70r19.5").text());
            assertEquals("35x12.50R17LT", TyreDesignation.parse("35x12.5r17lt").text());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void shortensAndCleansTheValueInTheMessage() {
        String message = assertThrows(
                        UnknownTyreDesignation.class, () -> TyreDesignation.parse("\u0000\u0007" + "x".repeat(500)))
                .detail();

        assertTrue(message.startsWith("'" + "x".repeat(40) + "...'"), message);
        assertFalse(message.contains("\u0000"), message);
        assertTrue(message.length() < 300, message);
    }

    @Test
    void namesTheFieldThatHeldTheDesignation() {
        UnknownTyreDesignation refusal =
                assertThrows(UnknownTyreDesignation.class, () -> TyreDesignation.parse("round"));

        assertEquals("designation", refusal.errors().get(0).field());
        assertEquals(
                "dimensions.frontTyre",
                refusal.inField("dimensions.frontTyre").errors().get(0).field());
    }
}
