package studio.stancebook.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table of words under {@code demo/} on the class path: columns by blanks, comments after a hash. */
final class InventedTable {

    private InventedTable() {}

    /** The rows in the order of the file. */
    static List<String[]> rows(String name) {
        return text(name)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.strip().split("\\s+", -1))
                .toList();
    }

    private static String text(String name) {
        try (InputStream file = InventedTable.class.getResourceAsStream("/demo/" + name)) {
            if (file == null) {
                throw new IllegalStateException("demo/" + name + " is not on the class path");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
