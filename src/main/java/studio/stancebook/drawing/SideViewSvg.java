package studio.stancebook.drawing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import studio.stancebook.quantity.NumberText;

/** Writes a side view as an SVG file that needs nothing else: every line carries its own colour and weight. */
@Component
public class SideViewSvg {

    /** A file is looked at larger than the narrowest page, so its words may be smaller than the room they have. */
    static final double LETTERING_SHARE = 0.78;

    private final ITemplateEngine templates;

    SideViewSvg(ITemplateEngine templates) {
        this.templates = templates;
    }

    /** The wide sheet as an XML document, the same under every locale. */
    public String of(SideView view) {
        return of(view, FileChoice.all());
    }

    /** The wide sheet with some of its layers. */
    public String of(SideView view, FileChoice choice) {
        return document(view.wide().with(choice.layers()), choice.widthPx(), view.title(), view.description());
    }

    private String document(Sheet sheet, int widthPx, String title, String description) {
        Context context = new Context(Locale.ROOT);
        context.setVariable("sheet", sheet);
        context.setVariable("title", title);
        context.setVariable("description", description);
        context.setVariable("left", NumberText.plain(sheet.left(), 0));
        context.setVariable("top", NumberText.plain(sheet.top(), 0));
        context.setVariable("width", NumberText.plain(widthPx, 0));
        context.setVariable("height", NumberText.plain(widthPx * sheet.height() / sheet.width(), 0));
        context.setVariable("lettering", NumberText.plain(LETTERING_SHARE * sheet.emMm(), 1));
        context.setVariable("film", Pen.FILM);
        context.setVariable("layers", layers(sheet));
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + templates.process("drawing/side-view-svg", context);
    }

    private static List<InkedLayer> layers(Sheet sheet) {
        List<InkedLayer> layers = sheet.layers().stream()
                .map(layer -> InkedLayer.of(layer, sheet.emMm()))
                .toList();
        return Stream.concat(layers.stream(), Stream.of(caution(sheet))).toList();
    }

    /** What is said on every sheet that leaves the site. */
    private static InkedLayer caution(Sheet sheet) {
        double em = sheet.emMm();
        Words words = new Words(
                "note",
                sheet.left() + 0.4 * em,
                sheet.top() + sheet.height() - 0.5 * em,
                "start",
                Phrases.of("drawing.caution"));
        return InkedLayer.of(new Layer("side-view__caution", List.of(), List.of(), List.of(words)), em);
    }

    /** A layer whose shapes know their pens. */
    record InkedLayer(String cls, List<InkedStroke> strokes, List<InkedDisc> discs, List<InkedWords> words) {

        static InkedLayer of(Layer layer, double em) {
            return new InkedLayer(
                    layer.cls(),
                    layer.strokes().stream()
                            .map(stroke -> InkedStroke.of(stroke, em))
                            .toList(),
                    layer.discs().stream().map(disc -> InkedDisc.of(disc, em)).toList(),
                    layer.words().stream().map(InkedWords::of).toList());
        }
    }

    record InkedStroke(
            String cls,
            String d,
            @Nullable String colour,
            @Nullable String width,
            @Nullable String dashes,
            @Nullable String fill,
            @Nullable String opacity) {

        static InkedStroke of(Stroke stroke, double em) {
            Pen pen = Pen.of(stroke.cls());
            return new InkedStroke(
                    stroke.cls(), stroke.d(), pen.stroke(), pen.width(em), pen.dashes(em), pen.fill(), pen.opacity());
        }
    }

    record InkedDisc(
            String cls,
            String cx,
            String cy,
            String r,
            @Nullable String colour,
            @Nullable String width,
            @Nullable String dashes,
            @Nullable String fill) {

        static InkedDisc of(Disc disc, double em) {
            Pen pen = Pen.of(disc.cls());
            return new InkedDisc(
                    disc.cls(),
                    disc.cx(),
                    disc.cy(),
                    disc.r(),
                    pen.stroke(),
                    pen.width(em),
                    pen.dashes(em),
                    pen.fill());
        }
    }

    record InkedWords(
            String cls,
            String tx,
            String ty,
            String anchor,
            String text,
            @Nullable String fill,
            @Nullable String weight) {

        static InkedWords of(Words words) {
            return new InkedWords(
                    words.cls(),
                    words.tx(),
                    words.ty(),
                    words.anchor(),
                    words.text(),
                    Pen.of(words.cls()).fill(),
                    words.strong() ? "600" : null);
        }
    }
}
