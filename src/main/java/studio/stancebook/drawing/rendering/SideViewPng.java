package studio.stancebook.drawing.rendering;

import java.util.List;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.PngWriter;
import studio.stancebook.paper.VectorPage;

/** Writes a side view as a picture of dots on film. */
public final class SideViewPng {

    /** The paper that the picture is taken of is as wide as this; only its proportions can be seen. */
    private static final double WIDTH_MM = 420;

    private SideViewPng() {}

    /** The wide sheet as a PNG file. */
    public static byte[] of(SideView view, FileChoice choice) {
        Sheet sheet = view.wide().with(choice.layers());
        double factor = WIDTH_MM / sheet.width();
        Group picture = new SheetFigure(sheet, WIDTH_MM, 0, 0, SideViewSvg.LETTERING_SHARE, Pen.FILM)
                .figure(view.description());
        VectorPage page = new VectorPage(
                view.title(),
                view.description(),
                WIDTH_MM,
                sheet.height() * factor,
                Pen.FILM,
                List.of(picture, caution(sheet, factor)));
        return PngWriter.of(page, choice.widthPx());
    }

    private static Group caution(Sheet sheet, double factor) {
        double em = SideViewSvg.LETTERING_SHARE * sheet.emMm() * factor;
        Mark.Writing words = new Mark.Writing(
                0.5 * em,
                sheet.height() * factor - 0.6 * em,
                Anchor.START,
                em,
                false,
                Pen.SOFT,
                null,
                Phrases.of("drawing.caution"));
        return Group.of("caution", Group.StructureRole.PARAGRAPH, List.of(words));
    }
}
