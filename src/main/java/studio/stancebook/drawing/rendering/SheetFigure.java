package studio.stancebook.drawing.rendering;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Layer;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Ink;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.Path;

/** Puts a sheet on paper: every line in the ink of its pen, all of it to one scale. */
public final class SheetFigure {

    private final Sheet sheet;
    private final double factor;
    private final double dx;
    private final double dy;
    private final double letteringMm;
    private final @Nullable String ground;

    /**
     * @param widthMm that the sheet is to be wide on paper
     * @param leftMm of it on paper
     * @param topMm of it on paper
     * @param letteringShare size of its words as a share of the room they have
     * @param ground colour that keeps lines away from words; null to let them through
     */
    public SheetFigure(
            Sheet sheet, double widthMm, double leftMm, double topMm, double letteringShare, @Nullable String ground) {
        this.sheet = sheet;
        this.factor = widthMm / sheet.width();
        this.dx = leftMm - sheet.left() * factor;
        this.dy = topMm - sheet.top() * factor;
        this.letteringMm = letteringShare * sheet.emMm() * factor;
        this.ground = ground;
    }

    /** The sheet as one figure. */
    public Group figure(String description) {
        List<Mark> marks = new ArrayList<>();
        sheet.layers().forEach(layer -> add(layer, marks));
        return new Group("side-view", Group.StructureRole.FIGURE, description, marks);
    }

    private void add(Layer layer, List<Mark> marks) {
        layer.strokes()
                .forEach(stroke -> marks.add(new Mark.Trace(stroke.path().placed(factor, dx, dy), ink(stroke.cls()))));
        layer.discs()
                .forEach(disc -> marks.add(new Mark.Trace(
                        Path.circle(disc.x(), disc.y(), disc.radius()).placed(factor, dx, dy), ink(disc.cls()))));
        layer.words().forEach(words -> marks.add(writing(words)));
    }

    private Ink ink(String cls) {
        Pen pen = Pen.of(cls);
        double em = sheet.emMm() * factor;
        List<Double> dashes =
                Arrays.stream(pen.dashEm()).map(dash -> dash * em).boxed().toList();
        double opacity = pen.opacity() == null ? 1 : Double.parseDouble(pen.opacity());
        return new Ink(pen.stroke(), pen.widthEm() * em, dashes, pen.fill(), opacity);
    }

    private Mark.Writing writing(TextLine words) {
        String colour = Pen.of(words.cls()).fill();
        return new Mark.Writing(
                words.x() * factor + dx,
                words.y() * factor + dy,
                Anchor.ofKey(words.anchor()),
                letteringMm,
                words.strong(),
                colour == null ? Pen.TAPE : colour,
                ground,
                words.text());
    }
}
