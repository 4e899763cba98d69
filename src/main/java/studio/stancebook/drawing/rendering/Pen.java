package studio.stancebook.drawing.rendering;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.quantity.NumberText;

/**
 * How a class of line or lettering looks where no style sheet reaches: the light colours and the weights of the style
 * sheet {@code side-view.css}, in em of the sheet.
 *
 * @param stroke colour of the line; null for none
 * @param widthEm weight of the line
 * @param fill colour of the inside; null for none
 * @param dashEm dashes and gaps; empty for an unbroken line
 * @param opacity null for full
 */
record Pen(
        @Nullable String stroke,
        double widthEm,
        @Nullable String fill,
        double[] dashEm,
        @Nullable String opacity) {

    static final String FILM = "#f4f2eb";
    static final String TAPE = "#17191b";
    private static final String INK = "#1e2123";
    static final String SOFT = "#5a5e5c";
    private static final String GHOST = "#a9aba3";
    private static final String RED = "#b9232a";

    /** The weight of a feature of one of several vehicles over that of its silhouette. */
    private static final double FINE = 0.6;

    private static final Map<String, Pen> PENS = Map.ofEntries(
            Map.entry("grid", line("#e6e2d6", 0.025)),
            Map.entry("grid-five", line("#d6d1c1", 0.03)),
            Map.entry("wedge", new Pen(null, 0, TAPE, new double[0], "0.07")),
            Map.entry("plane", line(SOFT, 0.05)),
            Map.entry("plane-typed", line(SOFT, 0.05, 0.3, 0.2)),
            Map.entry("touch", new Pen(SOFT, 0.06, FILM, new double[0], null)),
            Map.entry("ghost-wheel", line(GHOST, 0.06, 0.22, 0.17)),
            Map.entry("ghost", line(GHOST, 0.08)),
            Map.entry("zone", new Pen(null, 0, "#dcd8c9", new double[0], "0.8")),
            Map.entry("zone-edge", line(SOFT, 0.05, 0.3, 0.2)),
            Map.entry("ghost-leader", line(GHOST, 0.04)),
            Map.entry("guide", line(GHOST, 0.05, 0.5, 0.15, 0.08, 0.15)),
            Map.entry("ground", line(TAPE, 0.14)),
            Map.entry("tape", line(TAPE, 0.24)),
            Map.entry("drawn-in", line(TAPE, 0.12)),
            Map.entry("line-a", line(TAPE, 0.2)),
            Map.entry("line-b", line("#1f5fa8", 0.15)),
            Map.entry("line-c", line("#8a4b00", 0.15)),
            Map.entry("line-d", line("#1c6b45", 0.15, 0.9, 0.25)),
            Map.entry("line-e", line("#6b3fa0", 0.15, 0.45, 0.25)),
            Map.entry("line-f", line("#00667a", 0.15, 0.9, 0.2, 0.2, 0.2)),
            Map.entry("construction", line(SOFT, 0.06)),
            Map.entry("underbody", line(SOFT, 0.06)),
            Map.entry("feature", line(TAPE, 0.1)),
            Map.entry("shut", line(TAPE, 0.065)),
            Map.entry("tyre", line(TAPE, 0.2)),
            Map.entry("rim", line(TAPE, 0.08)),
            Map.entry("hub", line(TAPE, 0.05)),
            Map.entry("aim", line(SOFT, 0.07, 0.3, 0.16)),
            Map.entry("aim-point", line(SOFT, 0.08)),
            Map.entry("leader", line(SOFT, 0.04)),
            Map.entry("dimension", line(SOFT, 0.05)),
            Map.entry("slash", line(SOFT, 0.1)),
            Map.entry("count", words(SOFT)),
            Map.entry("strong", words(INK)),
            Map.entry("note", words(SOFT)),
            Map.entry("dimension-word", words(SOFT)),
            Map.entry("ghost-word", words(SOFT)));

    private static Pen line(String colour, double widthEm, double... dashEm) {
        return new Pen(colour, widthEm, null, dashEm, null);
    }

    private static Pen words(String colour) {
        return new Pen(null, 0, colour, new double[0], null);
    }

    /** The pen of classes such as {@code tape out} or {@code line-b fine}. */
    static Pen of(String classes) {
        String[] names = classes.split(" ", -1);
        Pen pen = PENS.get(names[0]);
        if (pen == null) {
            throw new IllegalArgumentException("There is no pen " + names[0]);
        }
        boolean thin = names[0].equals("slash") || names[0].equals("leader");
        boolean plain = names.length == 1 || (thin && names[1].equals("unsure"));
        return plain ? pen : pen.marked(names[1]);
    }

    static Map<String, Pen> all() {
        return PENS;
    }

    private Pen marked(String mark) {
        if (mark.equals("fine")) {
            return new Pen(stroke, widthEm * FINE, fill, dashEm, opacity);
        }
        if (mark.equals("out")) {
            return new Pen(stroke == null ? null : RED, widthEm, fill == null ? null : RED, dashEm, opacity);
        }
        return stroke == null ? this : new Pen(stroke, widthEm, fill, new double[] {0.16, 0.12}, opacity);
    }

    /** What SVG calls {@code stroke-width}, in mm; null without a line. */
    @Nullable
    String width(double emMm) {
        return stroke == null ? null : NumberText.plain(widthEm * emMm, 1);
    }

    /** What SVG calls {@code stroke-dasharray}, in mm; null for an unbroken line. */
    @Nullable
    String dashes(double emMm) {
        if (dashEm.length == 0) {
            return null;
        }
        StringBuilder text = new StringBuilder();
        for (double dash : dashEm) {
            text.append(text.isEmpty() ? "" : " ").append(NumberText.plain(dash * emMm, 1));
        }
        return text.toString();
    }
}
