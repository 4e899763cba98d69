package studio.stancebook.drawing;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.cache.CaffeineCacheMetrics;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import studio.stancebook.dimension.DimensionSet;

/**
 * Parts of pages that are made once and kept in memory, the least wanted given up first (studio decision 0050).
 *
 * <p>A part is found by a record of everything that it depends on, so one that is out of date is never found. While it is
 * made nothing is known of the request and of who sent it, so nothing of them can be kept and shown to somebody else; a link
 * in such a template begins with {@code ~/}, since the address of the request is not known either.
 */
@Component
public class Prints {

    /** Some 500 proposals as they are shown. */
    private static final long MOST_BYTES = 64L * 1024 * 1024;

    private final ITemplateEngine templates;
    private final Cache<Kept, Print> kept;

    /** What a part is found by; the language decides on its words and figures. */
    private record Kept(Record everything, Locale locale) {}

    Prints(ITemplateEngine templates, MeterRegistry meters) {
        this.templates = templates;
        this.kept = Caffeine.newBuilder()
                .maximumWeight(MOST_BYTES)
                .weigher((Kept key, Print print) -> print.weight())
                .recordStats()
                .build();
        CaffeineCacheMetrics.monitor(meters, kept, "prints");
    }

    /**
     * The part of a page that shows something; made now, unless it was made before.
     *
     * @param everything what it depends on, all of it but for the language, in the class of record that belongs to this part
     * @param template with a fragment {@code content}
     * @param model what the template speaks of; only asked for where the part is made
     */
    public Print of(Record everything, String template, Supplier<Map<String, Object>> model) {
        Locale locale = LocaleContextHolder.getLocale();
        return kept.get(new Kept(everything, locale), missing -> made(template, new Context(locale, model.get())));
    }

    /**
     * The small side view of dimensions.
     *
     * @param everything what decides on the dimensions, as above
     * @param dimensions only asked for where the picture is made
     */
    public Print thumbnail(Record everything, Supplier<DimensionSet> dimensions) {
        return of(everything, "drawing/picture", () -> Map.of("sheet", SideView.thumbnail(dimensions.get())));
    }

    private Print made(String template, Context context) {
        return new Print(templates.process(template, Set.of("content"), context));
    }
}
