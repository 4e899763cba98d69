package studio.stancebook.drawing.rendering;

import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Disc;
import studio.stancebook.drawing.Layer;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.Stroke;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.paper.PathData;

/** Writes the shapes of a sheet as SVG elements: coloured by the style sheet of a page, or each by its own pen. */
final class SheetMarkup {

    private final Markup markup = new Markup();
    private final double em;
    private final int decimals;
    private final boolean inked;

    private SheetMarkup(Sheet sheet, boolean inked) {
        this.em = sheet.emMm();
        this.decimals = sheet.decimals();
        this.inked = inked;
        sheet.layers().forEach(this::layer);
    }

    /** For a page, which brings the style sheet. */
    static String of(Sheet sheet) {
        return new SheetMarkup(sheet, false).markup.toString();
    }

    /** For a file that needs nothing else. */
    static String inked(Sheet sheet) {
        return new SheetMarkup(sheet, true).markup.toString();
    }

    private void layer(Layer layer) {
        boolean lettered = !inked && !layer.words().isEmpty();
        markup.element("g")
                .with("class", layer.cls())
                .with("fill", lettered ? "currentColor" : null)
                .with("stroke", lettered ? "none" : null)
                .holding();
        layer.strokes().forEach(this::stroke);
        layer.discs().forEach(this::disc);
        layer.words().forEach(this::words);
        markup.close("g");
    }

    private void stroke(Stroke stroke) {
        shape("path", stroke.cls())
                .with("d", PathData.of(stroke.path(), decimals))
                .empty();
    }

    private void disc(Disc disc) {
        shape("circle", disc.cls())
                .with("cx", disc.cx())
                .with("cy", disc.cy())
                .with("r", disc.r())
                .empty();
    }

    private Markup shape(String element, String cls) {
        markup.element(element).with("class", cls);
        if (inked) {
            Pen pen = Pen.of(cls);
            markup.with("stroke", pen.stroke())
                    .with("stroke-width", pen.width(em))
                    .with("stroke-dasharray", pen.dashes(em))
                    .with("fill", pen.fill())
                    .with("fill-opacity", pen.opacity());
        }
        return markup;
    }

    private void words(TextLine words) {
        markup.element("text").with("class", words.cls());
        if (inked) {
            markup.with("fill", Pen.of(words.cls()).fill())
                    .with("stroke", Pen.FILM)
                    .with("stroke-width", "0.22em")
                    .with("paint-order", "stroke")
                    .with("font-weight", weight(words));
        }
        markup.with("x", words.tx())
                .with("y", words.ty())
                .with("text-anchor", words.anchor())
                .words("text", words.text());
    }

    private static @Nullable String weight(TextLine words) {
        return words.strong() ? "600" : null;
    }
}
