package studio.stancebook.activity.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.FieldChange;

/**
 * Hashes against those of a program of its own, written after the rule in docs/operations.md: Python 3.13, hashlib,
 * {@code b"".join(b"%d:%s," % (len(p), p) for p in parts)} over the parts of the line.
 */
class LineHashTest {

    private static ActivityLine line(@Nullable Long person, List<FieldChange> changes) {
        return new ActivityLine(
                1,
                Instant.parse("2031-05-06T07:08:09.123456Z"),
                person,
                "Åsa Læd",
                "changed",
                "package",
                "12",
                "Tern (2031)",
                changes,
                ActivityLine.NO_HASH,
                "");
    }

    @Test
    void isThatOfTheDocumentedText() {
        List<FieldChange> changes = List.of(
                new FieldChange("wheelbase", "2850", "2860"),
                new FieldChange("kerbMass", null, ""),
                new FieldChange("note", "1,5", null));

        assertEquals(
                "18577971c22499a1d9a9edca1f6a39a416ee52b10858d46b3b583af8cde18f19", LineHash.of(line(7L, changes)));
    }

    @Test
    void isThatOfTheDocumentedTextWithoutPersonAndChanges() {
        ActivityLine line = new ActivityLine(
                2,
                Instant.parse("2031-05-06T07:08:09Z"),
                null,
                "the server itself",
                "added",
                "person",
                "3",
                "",
                List.of(),
                ActivityLine.NO_HASH,
                "");

        assertEquals("236b53208b4036bc1917f17a1e61a20725996dee90a63dc32ab7677a503c83cc", LineHash.of(line));
    }

    /** The border between two parts is part of the text. */
    @Test
    void differsWhenTextMovesFromOnePartToTheNext() {
        assertNotEquals(
                LineHash.of(line(7L, List.of(new FieldChange("a", "b", "c")))),
                LineHash.of(line(7L, List.of(new FieldChange("a", "b+", "c")))));
        assertNotEquals(
                LineHash.of(line(7L, List.of(new FieldChange("a", null, "c")))),
                LineHash.of(line(7L, List.of(new FieldChange("a", "", "c")))));
    }
}
