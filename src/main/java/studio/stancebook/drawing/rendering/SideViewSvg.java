package studio.stancebook.drawing.rendering;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import studio.stancebook.drawing.Layer;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.drawing.sideview.SideView;
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
        context.setVariable("sheet", cautioned(sheet));
        context.setVariable("title", title);
        context.setVariable("description", description);
        context.setVariable("left", NumberText.plain(sheet.left(), 0));
        context.setVariable("top", NumberText.plain(sheet.top(), 0));
        context.setVariable("width", NumberText.plain(widthPx, 0));
        context.setVariable("height", NumberText.plain(widthPx * sheet.height() / sheet.width(), 0));
        context.setVariable("lettering", NumberText.plain(LETTERING_SHARE * sheet.emMm(), 1));
        context.setVariable("film", Pen.FILM);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + templates.process("drawing/side-view-svg", context);
    }

    /** The sheet with what is said on every sheet that leaves the site. */
    private static Sheet cautioned(Sheet sheet) {
        double em = sheet.emMm();
        TextLine words = new TextLine(
                "note",
                sheet.left() + 0.4 * em,
                sheet.top() + sheet.height() - 0.5 * em,
                "start",
                Phrases.of("drawing.caution"));
        List<Layer> layers = new ArrayList<>(sheet.layers());
        layers.add(new Layer("side-view__caution", List.of(), List.of(), List.of(words)));
        return new Sheet(sheet.left(), sheet.top(), sheet.width(), sheet.height(), em, sheet.decimals(), layers);
    }
}
