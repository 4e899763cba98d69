package studio.stancebook.underlay;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.Ink;
import studio.stancebook.paper.LetterWidths;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.Path;

/** Collects the marks of a sheet from lines in mm of the vehicle, and keeps words off each other. */
final class Canvas {

    static final String INK = "#17191b";
    static final String SOFT = "#5a5e5c";
    static final String PAPER = "#ffffff";
    private static final String PALE = "#a9aba3";

    private static final double ASCENT = 0.8;
    private static final double DESCENT = 0.25;

    private final Layout layout;
    private final List<Mark> zones = new ArrayList<>();
    private final List<Mark> lines = new ArrayList<>();
    private final List<Mark> words = new ArrayList<>();
    private final List<double[]> taken = new ArrayList<>();

    Canvas(Layout layout) {
        this.layout = layout;
    }

    /** The lines of a sheet: their ink, and how wide they are for its lettering. */
    enum LineStyle {
        GROUND(INK, 0.16),
        TYRE(INK, 0.12),
        LINE(INK, 0.08),
        FINE(SOFT, 0.05),
        GUIDE(SOFT, 0.05, 1.6, 0.4, 0.25, 0.4),
        RULER(PALE, 0.06, 0.6, 0.45),
        AIM(INK, 0.07, 0.9, 0.45),
        EDGE(SOFT, 0.045, 0.3, 0.3),
        SLASH(SOFT, 0.11);

        private final String colour;
        private final double widthEm;
        private final double[] dashesEm;

        LineStyle(String colour, double widthEm, double... dashesEm) {
            this.colour = colour;
            this.widthEm = widthEm;
            this.dashesEm = dashesEm;
        }

        Ink ink(double em) {
            Double[] dashes = new Double[dashesEm.length];
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] = dashesEm[i] * em;
            }
            return Ink.line(colour, widthEm * em, dashes);
        }
    }

    void line(LineStyle style, double x1, double z1, double x2, double z2) {
        paperLine(style, layout.x(x1), layout.y(z1), layout.x(x2), layout.y(z2));
    }

    /** A line in mm on paper. */
    void paperLine(LineStyle style, double x1, double y1, double x2, double y2) {
        lines.add(new Mark.Trace(Path.line(x1, y1, x2, y2), style.ink(layout.em())));
    }

    void circle(LineStyle style, double x, double z, double radius) {
        Path path = Path.circle(layout.x(x), layout.y(z), layout.onPaper(radius));
        lines.add(new Mark.Trace(path, style.ink(layout.em())));
    }

    /** An upright or level rectangle that a band allows, its corners in mm of the vehicle. */
    void zone(double x1, double z1, double x2, double z2) {
        double left = layout.x(Math.min(x1, x2));
        double top = layout.y(Math.max(z1, z2));
        double width = layout.onPaper(Math.abs(x2 - x1));
        double height = layout.onPaper(Math.abs(z2 - z1));
        zones.add(new Mark.Trace(Path.rectangle(left, top, width, height), Ink.wash(INK, 0.1)));
    }

    /** A sector that a band allows, through its corners in mm of the vehicle. */
    void zone(List<double[]> corners) {
        List<double[]> placed = corners.stream()
                .map(corner -> new double[] {layout.x(corner[0]), layout.y(corner[1])})
                .toList();
        zones.add(new Mark.Trace(Path.through(placed, true), Ink.wash(INK, 0.1)));
    }

    /**
     * Writes words where they meet no others and stay within the frame; nothing where they would.
     *
     * @param x on paper
     * @param y of the base line on paper
     */
    boolean words(String text, double x, double y, Anchor anchor, boolean strong) {
        double em = layout.em();
        double width = LetterWidths.em(text, strong) * em * 1.06;
        double left = x
                - switch (anchor) {
                    case START -> 0;
                    case MIDDLE -> width / 2;
                    case END -> width;
                };
        double[] box = {left, y - ASCENT * em, left + width, y + DESCENT * em};
        boolean inside = box[0] >= layout.left() && box[2] <= layout.right() && box[1] >= layout.top();
        boolean free = inside && taken.stream().noneMatch(other -> meet(box, other));
        if (free) {
            taken.add(box);
            words.add(new Mark.Writing(x, y, anchor, em, strong, strong ? INK : SOFT, PAPER, text));
        }
        return free;
    }

    private static boolean meet(double[] box, double[] other) {
        return box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3];
    }

    /** From back to front. */
    List<Mark> marks() {
        List<Mark> all = new ArrayList<>(zones);
        all.addAll(lines);
        all.addAll(words);
        return all;
    }
}
