package studio.stancebook.activity.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldChange;
import studio.stancebook.activity.FieldValues;

class RecordTextTest {

    @Test
    void keepsAValueOfTheLongestLength() {
        assertEquals("a".repeat(1000), RecordText.value("a".repeat(1000)));
    }

    /** SHA-256 of a million times "a": NIST, Secure Hash Standard example values, third message. */
    @Test
    void cutsALongerValueWithItsDigest() {
        assertEquals(
                "a".repeat(500) + "… (1000000 characters, SHA-256"
                        + " cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0)",
                RecordText.value("a".repeat(1_000_000)));
    }

    @Test
    void neverCutsACharacterInTwo() {
        assertEquals("a".repeat(8) + "…", RecordText.words("a".repeat(8) + "\uD83D\uDE97" + "bcd", 10));
        assertEquals("a".repeat(7) + "\uD83D\uDE97…", RecordText.words("a".repeat(7) + "\uD83D\uDE97" + "bcd", 10));
    }

    @Test
    void replacesWhatNotEveryDatabaseGivesBack() {
        assertEquals("a\uFFFDb\uFFFDc\uFFFD\nd", RecordText.value("a\0b\uD83Dc\u001B\nd"));
    }

    @Test
    void tellsOnlyWhatDiffers() {
        ActivityEvent event = ActivityEvent.of(
                "changed",
                "thing",
                1,
                "Thing",
                FieldValues.of("same", 1).and("changed", 2).and("gone", 3),
                FieldValues.of("same", 1).and("changed", 4).and("new", 5));

        assertEquals(
                List.of(
                        new FieldChange("changed", "2", "4"),
                        new FieldChange("new", null, "5"),
                        new FieldChange("gone", "3", null)),
                FieldDifferences.of(event));
    }

    @Test
    void countsWhatIsTooMuchForALine() {
        Map<String, String> many = new LinkedHashMap<>();
        for (int i = 0; i < 305; i++) {
            many.put("f" + i, "v".repeat(2000));
        }

        List<FieldChange> changes =
                FieldDifferences.of(new ActivityEvent("made", "thing", "1", "Thing", Map.of(), many));

        assertEquals(301, changes.size());
        assertEquals(new FieldChange("…", null, "5 more"), changes.get(300));
        assertTrue(changes.stream()
                        .mapToInt(change -> String.valueOf(change.to()).length())
                        .sum()
                < 1_000_000);
    }
}
