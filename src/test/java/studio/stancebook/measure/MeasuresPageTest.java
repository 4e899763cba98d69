package studio.stancebook.measure;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import studio.stancebook.GeneratedPage;

class MeasuresPageTest {

    @Test
    void pageIsTheRegistry() {
        new GeneratedPage("measures.md").assertIs(page());
    }

    private static String page() {
        StringBuilder page = new StringBuilder("""
                # Measures

                Made from the registry by the build; do not edit. D is the mean of the front and rear overall tyre diameters;
                codes are those of SAE J1100. A measure whose needs are not recorded is *not measurable* and names what is missing.
                """);
        for (MeasureGroup group : MeasureGroup.values()) {
            String rows = MeasureRegistry.builtIn().all().stream()
                    .filter(measure -> measure.group() == group)
                    .map(MeasuresPageTest::row)
                    .collect(Collectors.joining());
            if (!rows.isEmpty()) {
                page.append("\n## ")
                        .append(group.label())
                        .append("\n\n| key | name | unit | definition | more is | needs |\n|---|---|---|---|---|---|\n")
                        .append(rows);
            }
        }
        return page.toString();
    }

    private static String row(Measure measure) {
        return "| `%s` | %s | %s | %s | %s | %s |\n"
                .formatted(
                        measure.key(),
                        measure.name(),
                        measure.unit().key(),
                        measure.definition(),
                        measure.more(),
                        String.join("; ", measure.needs()));
    }
}
