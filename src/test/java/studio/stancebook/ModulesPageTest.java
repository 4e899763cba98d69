package studio.stancebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModule;
import org.springframework.modulith.core.ApplicationModules;

class ModulesPageTest {

    private static final ApplicationModules MODULES = ApplicationModules.of(Stancebook.class);

    private static final Pattern FIRST_SENTENCE =
            Pattern.compile("/\\*\\*\\s*(?:\\* )?(.*?[.])(?:\\s|$)", Pattern.DOTALL);

    @Test
    void pageShowsTheLevelsThatTheImportsMake() {
        StringBuilder page = new StringBuilder("""
                # Modules

                Made from the imports and the package comments of the code by the build; do not edit. A module uses modules of lower
                levels only; which ones, the last column says.

                | level | module | what it is | uses |
                |---:|---|---|---|
                """);
        Map<Integer, List<ApplicationModule>> levels = MODULES.stream()
                .sorted(Comparator.comparing(ModulesPageTest::name))
                .collect(Collectors.groupingBy(
                        ModulesPageTest::level, () -> new TreeMap<>(Comparator.reverseOrder()), Collectors.toList()));
        for (var level : levels.entrySet()) {
            for (ApplicationModule module : level.getValue()) {
                page.append("| %d | `%s` | %s | %s |\n"
                        .formatted(level.getKey(), name(module), purpose(module), String.join(", ", uses(module))));
            }
        }
        new GeneratedPage("modules.md").assertIs(page.toString());
    }

    @Test
    void pictureOfTheArchitectureNamesEveryModuleOnce() throws IOException {
        String picture = Files.readString(Path.of("docs", "architecture.md")).split("```", -1)[1];

        assertThat(Pattern.compile("<b>(\\w+)</b>").matcher(picture).results().map(one -> one.group(1)))
                .containsExactlyInAnyOrderElementsOf(
                        MODULES.stream().map(ModulesPageTest::name).toList());
    }

    /** 0 for a module that uses none; else one more than the highest level that it uses. */
    private static int level(ApplicationModule module) {
        return module.getDirectDependencies(MODULES)
                .uniqueModules()
                .mapToInt(used -> 1 + level(used))
                .max()
                .orElse(0);
    }

    private static String purpose(ApplicationModule module) {
        try {
            String comment =
                    Files.readString(Path.of("src/main/java/studio/stancebook", name(module), "package-info.java"));
            Matcher sentence = FIRST_SENTENCE.matcher(comment);
            assertThat(sentence.find()).as(name(module)).isTrue();
            return sentence.group(1)
                    .replaceAll("\\s*\\n \\* ?", " ")
                    .replaceAll("\\{@code (\\w+)}", "`$1`")
                    .strip();
        } catch (IOException failure) {
            throw new IllegalStateException("There is no package-info.java of " + name(module), failure);
        }
    }

    private static List<String> uses(ApplicationModule module) {
        return module.getDirectDependencies(MODULES)
                .uniqueModules()
                .map(ModulesPageTest::name)
                .sorted()
                .toList();
    }

    private static String name(ApplicationModule module) {
        return module.getIdentifier().toString();
    }
}
