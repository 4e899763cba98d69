package studio.stancebook.underlay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Group.StructureRole;
import studio.stancebook.paper.Ink;
import studio.stancebook.paper.LetterWidths;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.Path;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.underlay.Canvas.LineStyle;

/** The foot of a sheet: title, scale, the bar to check the print by, every proportion with its band, and the caution. */
final class FigureTable {

    /** On every sheet that leaves the studio. */
    static final String CAUTION =
            "A proportion study, not a measurement of a vehicle. Local regulations and a licensed test body decide.";

    private static final double BAR_MM = 100;
    private static final double ROW_EM = 1.42;
    private static final double LEGEND_EM = 0.85;
    private static final int ROWS = 7;

    private final Framework framework;
    private final Layout layout;
    private final LocalDate date;
    private final double em;
    private final double top;

    FigureTable(Framework framework, Layout layout, LocalDate date) {
        this.framework = framework;
        this.layout = layout;
        this.date = date;
        this.em = layout.em();
        this.top = layout.tableTop();
    }

    List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        groups.add(frame());
        groups.add(line(StructureRole.TITLE, shortened(framework.title()), layout.left(), top + 2 * em, 1.5, true));
        groups.add(line(StructureRole.PARAGRAPH, about(), layout.left(), top + 3.7 * em, 1, false));
        groups.add(line(StructureRole.PARAGRAPH, size(), layout.left(), top + 5.2 * em, 1, false));
        groups.add(checkBar());
        groups.addAll(proportions());
        groups.add(line(StructureRole.PARAGRAPH, CAUTION, layout.left(), bottom() - 0.6 * em, 1, true));
        return groups;
    }

    private double bottom() {
        return layout.paper().heightMm() - Layout.MARGIN_MM;
    }

    private Group frame() {
        double left = layout.left();
        double width = layout.right() - left;
        List<Mark> marks = List.of(
                new Mark.Trace(Path.rectangle(left, layout.top(), width, bottom() - layout.top()), thin()),
                new Mark.Trace(Path.line(left, top, layout.right(), top), LineStyle.LINE.ink(em)));
        return Group.of("frame", StructureRole.ARTIFACT, marks);
    }

    private Ink thin() {
        return LineStyle.FINE.ink(em);
    }

    private Group line(StructureRole role, String text, double x, double y, double sizeEm, boolean strong) {
        Mark words = new Mark.Writing(
                x + 0.6 * em, y, Anchor.START, sizeEm * em, strong, strong ? Canvas.INK : Canvas.SOFT, null, text);
        return Group.of("words", role, List.of(words));
    }

    private double leftBlockMm() {
        return Math.max(BAR_MM + 2 * em, 46 * em);
    }

    private String shortened(String title) {
        double room = leftBlockMm() - em;
        String text = title;
        while (text.length() > 1 && LetterWidths.em(text, true) * 1.5 * em > room) {
            text = text.substring(0, text.offsetByCodePoints(text.length(), -1));
        }
        return text.equals(title) ? title : text.strip() + "\u2026";
    }

    private String about() {
        String segment = framework.segment().equals(framework.subject())
                ? framework.segment()
                : framework.subject() + " against " + framework.segment();
        return segment + " \u00b7 " + date;
    }

    private String size() {
        return "1:" + layout.denominator() + " on " + layout.paper() + " \u00b7 tyre " + framework.tyre() + ", D "
                + ShownUnits.text(framework.diameter(), 0) + " \u00b7 wheelbase "
                + ShownUnits.text(framework.wheelbase(), 0);
    }

    /** 100 mm on paper in tenths, whatever the scale. */
    private Group checkBar() {
        double x = layout.left() + 0.6 * em;
        double y = top + 8.4 * em;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Trace(Path.line(x, y, x + BAR_MM, y), LineStyle.LINE.ink(em)));
        for (int i = 0; i <= 10; i++) {
            double rise = i % 5 == 0 ? 1.1 * em : 0.6 * em;
            double at = x + i * BAR_MM / 10;
            marks.add(new Mark.Trace(Path.line(at, y, at, y - rise), LineStyle.LINE.ink(em)));
        }
        String text = "This bar is 100 mm long on a true print. Print at 100 %, not fitted to the page.";
        double size = Math.min(em, (leftBlockMm() - em) / LetterWidths.em(text, false));
        marks.add(new Mark.Writing(x, y + 1.5 * em, Anchor.START, size, false, Canvas.SOFT, null, text));
        return new Group("check-bar", StructureRole.FIGURE, "A bar of 100 mm on paper. " + text, marks);
    }

    private List<Group> proportions() {
        List<Group> rows = new ArrayList<>();
        double left = layout.left() + leftBlockMm() + em;
        double width = (layout.right() - left - 3 * em) / 2;
        List<Proportion> all = List.copyOf(framework.proportions().values());
        for (int column = 0; column < 2 && column * ROWS < all.size(); column++) {
            double x = left + column * (width + 2 * em);
            rows.add(row(x, width, 0, List.of("Proportion", "value", ShownUnits.symbol(), "band", "")));
            int end = Math.min(all.size(), (column + 1) * ROWS);
            for (int i = column * ROWS; i < end; i++) {
                rows.add(row(x, width, 1 + i - column * ROWS, cells(all.get(i))));
            }
        }
        List<String> legend = wrapped(legend(), layout.right() - left - em);
        for (int i = 0; i < legend.size(); i++) {
            rows.add(line(
                    StructureRole.PARAGRAPH,
                    legend.get(i),
                    left - 0.6 * em,
                    top + (13.1 + 1.15 * i) * em,
                    LEGEND_EM,
                    false));
        }
        return rows;
    }

    /** In at most two lines; what is left over stands on the page of the sheet. */
    private List<String> wrapped(String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (LetterWidths.em(longer, false) * LEGEND_EM * em > width) {
                lines.add(line.toString());
                line.setLength(0);
                longer = word;
            }
            line.replace(0, line.length(), longer);
        }
        lines.add(line.toString());
        return lines.size() <= 2 ? lines : List.of(lines.get(0), lines.get(1) + " \u2026");
    }

    private String legend() {
        String drawn = "Grey is what the band allows. " + basis();
        return framework.missing().isEmpty()
                ? drawn
                : drawn + " Not drawn, without band or value: " + String.join(", ", framework.missing()) + ".";
    }

    private String basis() {
        boolean proposal = framework.proportions().values().stream()
                .anyMatch(proportion -> proportion.basis() == Proportion.Basis.PROPOSAL);
        String points = framework.proportions().values().stream()
                .filter(proportion -> proportion.basis() == Proportion.Basis.POINT)
                .map(FigureTable::name)
                .collect(Collectors.joining(", "));
        String drawn =
                proposal ? "Lines are the proposal's." : "Lines are the medians of the class within their bands.";
        return points.isEmpty() ? drawn : drawn + " At points chosen: " + points + ".";
    }

    private List<String> cells(Proportion proportion) {
        String value = number(proportion, proportion.value()) + (proportion.degrees() ? "\u00b0" : "");
        String mm = proportion.degrees()
                ? ""
                : ShownUnits.plain(proportion.value() * framework.diameter(), 0).replace('-', '\u2212');
        Integer version = proportion.bandVersion();
        return List.of(name(proportion), value, mm, band(proportion), version == null ? "" : "v" + version);
    }

    private static String band(Proportion proportion) {
        Interval band = proportion.band();
        if (band == null) {
            return "no band";
        }
        if (!Double.isFinite(band.lower())) {
            return "to " + number(proportion, band.upper());
        }
        return Double.isFinite(band.upper())
                ? number(proportion, band.lower()) + " to " + number(proportion, band.upper())
                : "from " + number(proportion, band.lower());
    }

    private static String number(Proportion proportion, double value) {
        return NumberText.shown(value, proportion.decimals());
    }

    /** The name in as few words as the drawing needs. */
    static String name(Proportion proportion) {
        return switch (proportion.measure()) {
            case Framework.WHEELBASE -> "Wheelbase";
            case Framework.FRONT_OVERHANG -> "Front overhang";
            case Framework.REAR_OVERHANG -> "Rear overhang";
            case Framework.HEIGHT -> "Height";
            case Framework.CLEARANCE -> "Ground clearance";
            case Framework.ROCKER -> "Rocker to centre";
            case Framework.AIM -> "Windscreen aim";
            case Framework.SCREEN_ANGLE -> "Windscreen";
            case Framework.DASH -> "Dash to axle";
            case Framework.FRONT_DOOR -> "Front door gap";
            case Framework.REAR_DOOR -> "Rear door lead";
            case Framework.APPROACH -> "Approach";
            case Framework.DEPARTURE -> "Departure";
            default -> proportion.name();
        };
    }

    private Group row(double x, double width, int number, List<String> cells) {
        double[] rights = {0, 0.46, 0.6, 0.9, 1};
        double y = top + (1.6 + ROW_EM * number) * em;
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            Anchor anchor = i == 0 ? Anchor.START : Anchor.END;
            String colour = number == 0 || i > 2 ? Canvas.SOFT : Canvas.INK;
            marks.add(new Mark.Writing(x + rights[i] * width, y, anchor, 0.95 * em, false, colour, null, cells.get(i)));
        }
        return Group.of("proportion", StructureRole.PARAGRAPH, marks);
    }
}
