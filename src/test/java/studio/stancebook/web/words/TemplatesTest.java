package studio.stancebook.web.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What templates must not have in them: words of their own, style, script, unescaped text, other hosts. */
class TemplatesTest {

    @TestFactory
    List<DynamicTest> keepWordsStyleAndScriptElsewhere() {
        List<Template> templates = Template.all();
        assertTrue(templates.size() > 10, "templates are looked for in the wrong place");
        return templates.stream()
                .map(template -> DynamicTest.dynamicTest(
                        template.path().toString(), () -> assertEquals(List.of(), template.faults())))
                .toList();
    }

    /** Maven's jar plugin leaves files of this name out of the jar, as old Javadoc; seen with version 3.5. */
    @Test
    void haveNoNameThatThePackagedJarLacks() {
        assertEquals(
                List.of(),
                Template.all().stream()
                        .map(Template::path)
                        .filter(path -> path.endsWith("package.html"))
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p>Loose</p>",
                "<p th:text=\"#{a.b}\"></p>loose",
                "<img alt=\"A side view\">",
                "<p style=\"color:red\"></p>",
                "<p th:style=\"${a}\"></p>",
                "<style>p{}</style>",
                "<script>a()</script>",
                "<script src=\"https://elsewhere.example/a.js\"></script>",
                "<button onclick=\"a()\"></button>",
                "<p th:utext=\"${a}\"></p>",
                "<p th:utext=\"${print.markup()}\"></p>",
                "<a href=\"javascript:a()\"></a>",
                "<p th:if=\"${a}\" th:replace=\"~{a :: b}\"></p>",
                "<a href=\"https://elsewhere.example/\"></a>"
            })
    void areFoundOut(String fault) {
        assertFalse(Template.of(Path.of("page.html"), "<div>" + fault + "</div>")
                .faults()
                .isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p th:text=\"#{a.b}\">Prototype</p>",
                "<!--/* words about the template */-->",
                "<p>12 / 5</p>",
                "<html xmlns:th=\"http://www.thymeleaf.org\"></html>",
                "<img alt=\"\">"
            })
    void mayHave(String harmless) {
        assertEquals(List.of(), Template.of(Path.of("page.html"), harmless).faults());
    }

    @Test
    void nameOnlyMessagesThatThereAre() {
        Set<String> missing = Bundles.literalKeysOfTemplates();
        assertTrue(missing.size() > 50, "messages are looked for in the wrong way");
        missing.removeAll(Bundles.keys());
        assertEquals(Set.of(), missing);
    }
}
