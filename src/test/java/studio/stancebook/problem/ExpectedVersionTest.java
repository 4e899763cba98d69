package studio.stancebook.problem;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExpectedVersionTest {

    @Test
    void readsItsOwnTag() {
        assertEquals(new ExpectedVersion(7), ExpectedVersion.ofIfMatch(ExpectedVersion.tag(7)));
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", " "})
    void asksForAMissingHeader(String header) {
        assertThrows(PreconditionRequired.class, () -> ExpectedVersion.ofIfMatch(header));
    }

    /** RFC 9110 8.8.3: an entity tag is quoted; a weak tag does not match strongly. */
    @ParameterizedTest
    @ValueSource(strings = {"7", "W/\"7\"", "*", "\"x\"", "\"1\", \"2\"", "\"99999999999999999999\""})
    void refusesWhatIsNotOneStrongVersion(String header) {
        assertThrows(Malformed.class, () -> ExpectedVersion.ofIfMatch(header));
    }

    @Test
    void tellsAStaleWriterTheVersionOfNow() {
        ExpectedVersion expected = new ExpectedVersion(3);

        assertDoesNotThrow(() -> expected.check(3, "package"));
        Stale stale = assertThrows(Stale.class, () -> expected.check(4, "package"));
        assertEquals(412, stale.type().status());
        assertEquals(
                "The package is at version 4 now, not 3: read it again and make the change on top of that.",
                stale.detail());
    }
}
