package studio.stancebook.drawing.rendering;

import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.dialect.AbstractProcessorDialect;
import org.thymeleaf.engine.AttributeName;
import org.thymeleaf.model.IProcessableElementTag;
import org.thymeleaf.processor.IProcessor;
import org.thymeleaf.processor.element.IElementTagStructureHandler;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.standard.processor.AbstractStandardExpressionAttributeTagProcessor;
import org.thymeleaf.templatemode.TemplateMode;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.sideview.ClassDrawing;
import studio.stancebook.drawing.strip.BandStrip;

/**
 * Places the shapes of a drawing in a template (studio decision 0055): an element with {@code draw:sheet="${sheet}"},
 * {@code draw:inked="${sheet}"}, {@code draw:strip="${strip}"} or {@code draw:lines="${class}"} is replaced by them.
 */
@Component
public class DrawingDialect extends AbstractProcessorDialect {

    private static final String PREFIX = "draw";
    private static final int AFTER_CONDITIONS_AND_LOOPS = 1300;

    /** The dialect, for a template engine. */
    public DrawingDialect() {
        super("Drawings", PREFIX, StandardDialect.PROCESSOR_PRECEDENCE);
    }

    @Override
    public Set<IProcessor> getProcessors(String dialectPrefix) {
        return Set.of(
                new Shapes<>(dialectPrefix, "sheet", Sheet.class, SheetMarkup::of),
                new Shapes<>(dialectPrefix, "inked", Sheet.class, SheetMarkup::inked),
                new Shapes<>(dialectPrefix, "strip", BandStrip.class, StripMarkup::of),
                new Shapes<>(dialectPrefix, "lines", ClassDrawing.class, ClassLinesMarkup::of));
    }

    /** Replaces an element by the markup of what its attribute names. */
    private static final class Shapes<T> extends AbstractStandardExpressionAttributeTagProcessor {

        private final Class<T> type;
        private final Function<T, String> markup;

        Shapes(String prefix, String attribute, Class<T> type, Function<T, String> markup) {
            super(TemplateMode.HTML, prefix, attribute, AFTER_CONDITIONS_AND_LOOPS, true);
            this.type = type;
            this.markup = markup;
        }

        @Override
        protected void doProcess(
                ITemplateContext context,
                IProcessableElementTag tag,
                AttributeName attributeName,
                String attributeValue,
                @Nullable Object drawn,
                IElementTagStructureHandler structure) {
            structure.replaceWith(markup.apply(type.cast(drawn)), false);
        }
    }
}
