package studio.stancebook.drawing.rendering;

import studio.stancebook.drawing.sideview.ClassDrawing;
import studio.stancebook.paper.PathData;
import studio.stancebook.quantity.NumberText;

/**
 * Writes the silhouettes of a class, each in a group that can be reached by keyboard and is named: its name is there for those
 * who do not see the picture, and the style sheet shows it while the line is pointed at, tapped or focused. A wide line that
 * is not seen lies over each, so that a thin one is easily hit.
 */
final class ClassLinesMarkup {

    private ClassLinesMarkup() {}

    static String of(ClassDrawing drawing) {
        Markup markup = new Markup();
        drawing.lines().forEach(line -> write(line, markup));
        return markup.toString();
    }

    private static void write(ClassDrawing.Line line, Markup markup) {
        String id = "silhouette-" + line.id();
        markup.element("g")
                .with("class", "class-picture__one")
                .with("tabindex", "0")
                .with("role", "img")
                .with("aria-label", line.name())
                .holding();
        markup.element("path")
                .with("id", id)
                .with("d", PathData.of(line.path(), 0))
                .empty();
        markup.element("use")
                .with("class", "class-picture__reach")
                .with("href", "#" + id)
                .empty();
        markup.element("text")
                .with("class", "class-picture__name")
                .with("aria-hidden", "true")
                .with("x", NumberText.plain(line.x(), 0))
                .with("y", NumberText.plain(line.y(), 0))
                .words("text", line.name());
        markup.close("g");
    }
}
