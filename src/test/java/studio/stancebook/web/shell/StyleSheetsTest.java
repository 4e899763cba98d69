package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules that the style sheets keep among themselves. */
class StyleSheetsTest {

    private static final Path CSS = Path.of("src/main/resources/static/assets/css");
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern COLOUR =
            Pattern.compile("#[0-9a-fA-F]{3,8}\\b|\\b(?:rgba?|hsla?|oklch|oklab|lab|lch|color)\\(");

    @Test
    void areAllImportedByTheMainSheet() {
        Set<String> imported = found(Pattern.compile("@import \"([^\"]+)\""), text(CSS.resolve("main.css")));
        Set<String> there =
                sheets().map(path -> CSS.relativize(path).toString()).collect(toSortedSet());
        there.remove("main.css");
        assertEquals(there, imported);
    }

    @Test
    void areImportedIntoTheLayerTheirFolderIsNamedAfter() {
        Pattern line = Pattern.compile("@import \"([a-z]+)/[^\"]+\" layer\\(([a-z]+)\\)");
        Set<String> mismatches = line.matcher(text(CSS.resolve("main.css")))
                .results()
                .filter(one -> !one.group(1).equals(one.group(2)))
                .map(one -> one.group())
                .collect(toSortedSet());
        assertEquals(Set.of(), mismatches);
    }

    @Test
    void useOnlyCustomPropertiesThatAreDefined() {
        String all = sheets().map(StyleSheetsTest::text).collect(Collectors.joining("\n"));
        Set<String> used = found(Pattern.compile("var\\(--([a-z0-9-]+)"), all);
        used.removeAll(found(Pattern.compile("--([a-z0-9-]+):"), all));
        assertEquals(Set.of(), used);
    }

    @Test
    void nameColoursOnlyInTheSettings() {
        Set<String> offenders = sheets().filter(path -> !path.endsWith("settings/colours.css"))
                .filter(path -> COLOUR.matcher(text(path)).find())
                .map(Path::toString)
                .collect(toSortedSet());
        assertEquals(Set.of(), offenders);
    }

    private static Stream<Path> sheets() {
        try (Stream<Path> files = Files.walk(CSS)) {
            return files.filter(path -> path.toString().endsWith(".css")).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path path) {
        try {
            return COMMENT.matcher(Files.readString(path)).replaceAll("");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(one -> one.group(1)).collect(toSortedSet());
    }

    private static java.util.stream.Collector<String, ?, Set<String>> toSortedSet() {
        return Collectors.toCollection(TreeSet::new);
    }
}
