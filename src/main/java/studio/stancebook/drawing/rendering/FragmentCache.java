package studio.stancebook.drawing.rendering;

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
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.quantity.ShownUnits;

/**
 * Drawings and strips as markup, rendered once and kept in memory, the least used given up first (studio decision 0050).
 *
 * <p>A fragment is found by a record of everything that it depends on, so one that is out of date is never found. While it is
 * rendered nothing is known of the request and of who sent it, so nothing of them can be kept and shown to somebody else; a
 * link in such a template begins with {@code ~/}, since the address of the request is not known either.
 */
@Component
public class FragmentCache {

    /** Some 500 proposals as they are shown. */
    private static final long MOST_BYTES = 64L * 1024 * 1024;

    private final ITemplateEngine templates;
    private final Cache<FragmentKey, CachedFragment> fragments;

    /** What a fragment is found by; language and units decide on its words and figures. */
    private record FragmentKey(Record state, Locale locale, ShownUnits units) {}

    FragmentCache(ITemplateEngine templates, MeterRegistry meters) {
        this.templates = templates;
        this.fragments = Caffeine.newBuilder()
                .maximumWeight(MOST_BYTES)
                .weigher((FragmentKey key, CachedFragment fragment) -> fragment.weight())
                .recordStats()
                .build();
        CaffeineCacheMetrics.monitor(meters, fragments, "fragments");
    }

    /**
     * A fragment; rendered now, unless it was rendered before.
     *
     * @param state what it depends on, all of it but for language and units, in the class of record that belongs to this fragment
     * @param template with a fragment {@code content}
     * @param model what the template speaks of; only asked for where the fragment is rendered
     */
    public CachedFragment get(Record state, String template, Supplier<Map<String, Object>> model) {
        Locale locale = LocaleContextHolder.getLocale();
        return fragments.get(
                new FragmentKey(state, locale, ShownUnits.current()),
                missing -> rendered(template, new Context(locale, model.get())));
    }

    /**
     * The small side view of dimensions.
     *
     * @param state what decides on the dimensions, as above
     * @param dimensions only asked for where the picture is made
     */
    public CachedFragment thumbnail(Record state, Supplier<DimensionSet> dimensions) {
        return get(state, "drawing/picture", () -> Map.of("sheet", SideView.thumbnail(dimensions.get())));
    }

    private CachedFragment rendered(String template, Context context) {
        return new CachedFragment(templates.process(template, Set.of("content"), context));
    }
}
