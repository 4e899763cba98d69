package studio.stancebook;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModule;
import org.springframework.modulith.core.ApplicationModules;

class ModulesPageTest {

    private static final ApplicationModules MODULES = ApplicationModules.of(Stancebook.class);

    @Test
    void pageIsWhatTheCodeImports() {
        StringBuilder page = new StringBuilder("""
                # Modules

                Made from the imports of the code by the build; do not edit. An arrow points from a module to one that it uses.

                ```mermaid
                flowchart TD
                """);
        sorted().forEach(module -> page.append("  ").append(name(module)).append('\n'));
        sorted().forEach(module ->
                uses(module).forEach(used -> page.append("  %s --> %s\n".formatted(name(module), used))));
        new GeneratedPage("modules.md").assertIs(page.append("```\n").toString());
    }

    private static List<ApplicationModule> sorted() {
        return MODULES.stream()
                .sorted(Comparator.comparing(ModulesPageTest::name))
                .toList();
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
