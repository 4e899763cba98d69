package studio.stancebook.drawing.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.StringTemplateResolver;

class PrintsTest {

    private static final String TEMPLATE =
            "<html><p>around</p><th:block th:fragment=\"content\"><p th:text=\"${name}\"></p></th:block></html>";

    private final AtomicInteger rendered = new AtomicInteger();
    private FragmentCache fragments;

    private record Shown(String name, int version) {}

    private record Other(String name, int version) {}

    @BeforeEach
    void makeThem() {
        SpringTemplateEngine templates = new SpringTemplateEngine();
        templates.setTemplateResolver(new StringTemplateResolver());
        fragments = new FragmentCache(templates, new SimpleMeterRegistry());
        LocaleContextHolder.setLocale(Locale.ENGLISH);
    }

    @AfterEach
    void forgetTheLanguage() {
        LocaleContextHolder.resetLocaleContext();
    }

    private CachedFragment fragment(Record everything, String name) {
        return fragments.get(everything, TEMPLATE, () -> {
            rendered.incrementAndGet();
            return Map.of("name", name);
        });
    }

    @Test
    void areRenderedOnceForEqualThings() {
        CachedFragment first = fragment(new Shown("Tern", 1), "Tern");

        assertSame(first, fragment(new Shown("Tern", 1), "Tern"));
        assertEquals(1, rendered.get());
    }

    @Test
    void areRenderedAnewForWhateverDiffers() {
        CachedFragment first = fragment(new Shown("Tern", 1), "Tern");

        assertNotSame(first, fragment(new Shown("Tern", 2), "Tern"));
        assertNotSame(first, fragment(new Shown("Dunlin", 1), "Dunlin"));
        assertNotSame(first, fragment(new Other("Tern", 1), "Tern"));
        LocaleContextHolder.setLocale(Locale.GERMAN);
        assertNotSame(first, fragment(new Shown("Tern", 1), "Tern"));
        assertEquals(5, rendered.get());
    }

    @Test
    void holdTheContentAloneAndEscapeWhatTheyAreGiven() {
        assertEquals(
                "<p>&lt;b onclick=&quot;a()&quot;&gt;</p>",
                fragment(new Shown("", 1), "<b onclick=\"a()\">").markup());
    }

    @Test
    void areNotKeptWhereTheyCannotBeRendered() {
        assertThrows(
                IllegalStateException.class,
                () -> fragments.get(new Shown("Tern", 1), TEMPLATE, () -> {
                    throw new IllegalStateException("cannot be read");
                }));

        assertEquals("<p>Tern</p>", fragment(new Shown("Tern", 1), "Tern").markup());
    }
}
