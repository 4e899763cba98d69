package studio.stancebook.review.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import studio.stancebook.account.Deed;
import studio.stancebook.account.Facts;
import studio.stancebook.review.Change;

class WrittenTest {

    @Test
    void keepsAValueOfTheLongestLength() {
        assertEquals("a".repeat(1000), Written.value("a".repeat(1000)));
    }

    /** SHA-256 of a million times "a": NIST, Secure Hash Standard example values, third message. */
    @Test
    void cutsALongerValueWithItsDigest() {
        assertEquals(
                "a".repeat(500) + "… (1000000 characters, SHA-256"
                        + " cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0)",
                Written.value("a".repeat(1_000_000)));
    }

    @Test
    void neverCutsACharacterInTwo() {
        assertEquals("a".repeat(8) + "…", Written.words("a".repeat(8) + "\uD83D\uDE97" + "bcd", 10));
        assertEquals("a".repeat(7) + "\uD83D\uDE97…", Written.words("a".repeat(7) + "\uD83D\uDE97" + "bcd", 10));
    }

    @Test
    void replacesWhatNotEveryDatabaseGivesBack() {
        assertEquals("a\uFFFDb\uFFFDc\uFFFD\nd", Written.value("a\0b\uD83Dc\u001B\nd"));
    }

    @Test
    void tellsOnlyWhatDiffers() {
        Deed deed = Deed.of(
                "changed",
                "thing",
                1,
                "Thing",
                Facts.of("same", 1).and("changed", 2).and("gone", 3),
                Facts.of("same", 1).and("changed", 4).and("new", 5));

        assertEquals(
                List.of(new Change("changed", "2", "4"), new Change("new", null, "5"), new Change("gone", "3", null)),
                Differences.of(deed));
    }

    @Test
    void countsWhatIsTooMuchForALine() {
        Map<String, String> many = new LinkedHashMap<>();
        for (int i = 0; i < 305; i++) {
            many.put("f" + i, "v".repeat(2000));
        }

        List<Change> changes = Differences.of(new Deed("made", "thing", "1", "Thing", Map.of(), many));

        assertEquals(301, changes.size());
        assertEquals(new Change("…", null, "5 more"), changes.get(300));
        assertTrue(changes.stream()
                        .mapToInt(change -> String.valueOf(change.to()).length())
                        .sum()
                < 1_000_000);
    }
}
