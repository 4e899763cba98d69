package studio.stancebook;

import static java.nio.file.Files.readString;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What can be checked of docs/security.md by itself: that it leaves nothing out of OWASP ASVS 5.0.0, levels 1 and 2, and names no
 * test that there is not. Whether it is true, people judge.
 */
class SecurityPageTest {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\d.])\\d{1,2}\\.[1-9]\\d?\\.[1-9]\\d?(?![\\d.]*\\d)");
    private static final Pattern TEST_CLASS = Pattern.compile("`(\\w+(?:Test|IT))`");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| \\d[^|]* \\| [^|]+ \\| ([^|]+) \\| ([^|]*) \\|$");
    private static final Pattern JUDGEMENT = Pattern.compile("met|not met|not applicable");

    private final String page = read(Path.of("docs/security.md"));

    @Test
    void namesEveryRequirementOfLevelsOneAndTwoOnce() throws IOException {
        List<String> asked =
                Files.readAllLines(Path.of("src/test/resources/reference/asvs-5.0.0-levels-1-2.txt")).stream()
                        .filter(line -> !line.startsWith("#"))
                        .map(line -> line.split(" ")[0])
                        .toList();

        // From memory: version 5.0.0 has 70 requirements of level 1 and 183 of level 2.
        assertThat(asked).hasSize(70 + 183).doesNotHaveDuplicates();
        assertThat(found(NUMBER, 0)).containsExactlyElementsOf(asked);
    }

    @Test
    void judgesEachRow() {
        assertThat(found(ROW, 1))
                .hasSizeGreaterThan(150)
                .allMatch(word -> JUDGEMENT.matcher(word).matches());
        assertThat(page.lines().filter(line -> line.matches("\\| \\d.*"))).hasSameSizeAs(found(ROW, 1));
    }

    @Test
    void saysWhatIsMissingOfWhatIsNotMet() {
        assertThat(ROW.matcher(page).results().filter(row -> !row.group(1).equals("met")))
                .extracting(row -> row.group(2))
                .doesNotContain("");
    }

    @Test
    void namesNoTestThatThereIsNot() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            Set<String> there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.substring(0, name.length() - ".java".length()))
                    .collect(Collectors.toSet());

            assertThat(there).containsAll(found(TEST_CLASS, 1));
        }
    }

    private List<String> found(Pattern pattern, int group) {
        return pattern.matcher(page)
                .results()
                .map((MatchResult one) -> one.group(group))
                .toList();
    }

    private static String read(Path file) {
        try {
            return readString(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
