package studio.stancebook.drawing;

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

    private final AtomicInteger made = new AtomicInteger();
    private Prints prints;

    private record Shown(String name, int version) {}

    private record Other(String name, int version) {}

    @BeforeEach
    void makeThem() {
        SpringTemplateEngine templates = new SpringTemplateEngine();
        templates.setTemplateResolver(new StringTemplateResolver());
        prints = new Prints(templates, new SimpleMeterRegistry());
        LocaleContextHolder.setLocale(Locale.ENGLISH);
    }

    @AfterEach
    void forgetTheLanguage() {
        LocaleContextHolder.resetLocaleContext();
    }

    private Print print(Record everything, String name) {
        return prints.of(everything, TEMPLATE, () -> {
            made.incrementAndGet();
            return Map.of("name", name);
        });
    }

    @Test
    void areMadeOnceForEqualThings() {
        Print first = print(new Shown("Tern", 1), "Tern");

        assertSame(first, print(new Shown("Tern", 1), "Tern"));
        assertEquals(1, made.get());
    }

    @Test
    void areMadeAnewForWhateverDiffers() {
        Print first = print(new Shown("Tern", 1), "Tern");

        assertNotSame(first, print(new Shown("Tern", 2), "Tern"));
        assertNotSame(first, print(new Shown("Heron", 1), "Heron"));
        assertNotSame(first, print(new Other("Tern", 1), "Tern"));
        LocaleContextHolder.setLocale(Locale.GERMAN);
        assertNotSame(first, print(new Shown("Tern", 1), "Tern"));
        assertEquals(5, made.get());
    }

    @Test
    void holdTheContentAloneAndEscapeWhatTheyAreGiven() {
        assertEquals(
                "<p>&lt;b onclick=&quot;a()&quot;&gt;</p>",
                print(new Shown("", 1), "<b onclick=\"a()\">").markup());
    }

    @Test
    void areNotKeptWhereTheyCannotBeMade() {
        assertThrows(
                IllegalStateException.class,
                () -> prints.of(new Shown("Tern", 1), TEMPLATE, () -> {
                    throw new IllegalStateException("cannot be read");
                }));

        assertEquals("<p>Tern</p>", print(new Shown("Tern", 1), "Tern").markup());
    }
}
