package studio.stancebook.dimension.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import studio.stancebook.problem.FieldError;

class DimensionFormTemplateTest {

    private static final SpringTemplateEngine ENGINE = engine();

    private static SpringTemplateEngine engine() {
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
        resolver.setPrefix("templates/");
        resolver.setSuffix(".html");
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("messages/dimension");
        messages.setDefaultEncoding("UTF-8");
        SpringTemplateEngine engine = new SpringTemplateEngine();
        engine.setTemplateResolver(resolver);
        engine.setTemplateEngineMessageSource(messages);
        return engine;
    }

    private static String render(DimensionForm form) {
        return ENGINE.process(
                "fragments/dimension-form",
                Set.of("dimension-form"),
                new Context(Locale.ENGLISH, Map.<String, Object>of("form", form)));
    }

    private static List<String> all(String pattern, String html) {
        return Pattern.compile(pattern)
                .matcher(html)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void hasOneInputForEachNameAndNoMessageMissing() {
        String html = render(DimensionForm.blank());

        List<String> names = all("name=\"dimensions\\.[^\"]+\"", html);
        assertEquals(names.size(), names.stream().distinct().count());
        for (Section section : DimensionForm.blank().sections()) {
            section.entries().forEach(entry -> assertTrue(html.contains("name=\"" + entry.name() + "\"")));
            section.points()
                    .forEach(point ->
                            assertTrue(html.contains("name=\"" + point.z().name() + "\"")));
        }
        assertFalse(html.contains("??"), "a message is missing");
    }

    @Test
    void pointsEveryDescriptionAtSomethingOnThePage() {
        String html = render(DimensionForm.blank()
                .with(List.of(
                        new FieldError("dimensions.wheelbase", "Too long."),
                        new FieldError("dimensions.cowl", "Half a point."),
                        new FieldError("dimensions.underbody[1]", "No point."),
                        new FieldError("dimensions.uncertainties.wheelbase", "Too vague."))));

        Set<String> ids = all("(?<= id=\")[^\"]+", html).stream().collect(Collectors.toSet());
        all("(?<=aria-describedby=\")[^\"]+", html).forEach(id -> assertTrue(ids.contains(id), id));
        for (String message : List.of("Too long.", "Half a point.", "No point.", "Too vague.")) {
            assertEquals(1, all(Pattern.quote(message), html).size(), message);
        }
    }

    @Test
    void escapesWhatWasTyped() {
        String html = render(DimensionForm.typed(
                Map.of("dimensions.wheelbase", "\"><script>", "dimensions.outline", "</textarea><script>")));

        assertFalse(html.contains("<script>"));
    }
}
