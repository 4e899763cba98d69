package studio.stancebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A page under {@code docs/} that is made from the program: a test compares it, and {@code mvn test
 * -Dstancebook.write-docs=true -Dtest='*PageTest'} writes it anew.
 */
public final class GeneratedPage {

    private final Path path;

    public GeneratedPage(String name) {
        this.path = Path.of("docs", name);
    }

    /** Fails when the page in the repository is not {@code text}. */
    public void assertIs(String text) {
        try {
            if (Boolean.getBoolean("stancebook.write-docs")) {
                Files.writeString(path, text);
            }
            assertEquals(text, Files.readString(path), path + " is out of date: see DEVELOPERS.md, generated pages");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
