package studio.stancebook.proposal.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import studio.stancebook.drawing.rendering.StripMarks;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Group.StructureRole;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.Paragraphs;

/**
 * Every measure that was judged, as a table with a strip in each row: those outside first, each with what would mend it
 * as far as there is room, then those too close to call, then those inside.
 */
final class ReviewStrips {

    /** How wide the table is. */
    static final double WIDTH_MM = 156;

    private static final double NAME_MM = 53;
    private static final double VALUE_RIGHT_MM = 64.5;
    private static final double STRIP_LEFT_MM = 67;
    private static final double STRIP_MM = 39;
    private static final double BAND_LEFT_MM = 108;
    private static final double VERDICT_LEFT_MM = 131;

    private static final double LEAST_ROW_MM = 3.5;
    private static final double MOST_ROW_MM = 6.6;
    private static final double SIZE_MM = 2.5;
    private static final double REMARK_MM = 2.3;
    private static final double REMARK_GAP_MM = 0.8;
    private static final double NOTE_MM = 2.3;
    private static final double HEADER_MM = 4.6;
    /** Room under the table for what was not judged, and for what did not fit. */
    private static final double NOTES_MM = 12;

    /** Finds the words of a key. */
    interface Phrasebook {
        String words(String key, Object... places);
    }

    private final AssessmentView assessment;
    private final Phrasebook phrases;
    private final double left;
    private final double bottom;
    private final Paragraphs column;
    private double rowMm = LEAST_ROW_MM;

    ReviewStrips(AssessmentView assessment, Phrasebook phrases, double leftMm, double topMm, double bottomMm) {
        this.assessment = assessment;
        this.phrases = phrases;
        this.left = leftMm;
        this.bottom = bottomMm;
        this.column = new Paragraphs(leftMm, topMm, WIDTH_MM, bottomMm);
    }

    List<Group> groups() {
        column.add(
                StructureRole.HEADING,
                phrases.words(
                        "proposal.sheet.judged", assessment.judged(), assessment.outside(), assessment.tooClose()),
                3.6,
                true,
                ReviewSheet.INK);
        List<BandStrip> judged = Stream.of(
                        assessment.outsideStrips(), assessment.tooCloseStrips(), assessment.insideStrips())
                .flatMap(List::stream)
                .toList();
        if (!judged.isEmpty()) {
            header();
            table(judged);
        }
        column.skip(1);
        note("proposal.sheet.without-band", assessment.withoutBand());
        note("proposal.sheet.not-measurable", assessment.notMeasurable());
        return column.groups();
    }

    private void header() {
        double y = column.y() + NOTE_MM + 1;
        List<Group> cells = List.of(
                cell(StructureRole.COLUMN_HEADER, 0, y, Anchor.START, "proposal.measure"),
                cell(StructureRole.COLUMN_HEADER, VALUE_RIGHT_MM, y, Anchor.END, "proposal.sheet.value"),
                cell(StructureRole.COLUMN_HEADER, STRIP_LEFT_MM, y, Anchor.START, "proposal.sheet.strip"),
                cell(StructureRole.COLUMN_HEADER, BAND_LEFT_MM, y, Anchor.START, "proposal.sheet.band"),
                cell(StructureRole.COLUMN_HEADER, VERDICT_LEFT_MM, y, Anchor.START, "proposal.verdict"));
        cells.forEach(cell -> column.add(cell, 0));
        column.skip(HEADER_MM);
    }

    private Group cell(StructureRole role, double x, double y, Anchor anchor, String key) {
        return Group.of(
                "cell", role, List.of(writing(x, y, anchor, NOTE_MM, false, ReviewSheet.SOFT, phrases.words(key))));
    }

    private Mark writing(double x, double y, Anchor anchor, double sizeMm, boolean strong, String colour, String text) {
        return new Mark.Writing(left + x, y, anchor, sizeMm, strong, colour, null, text);
    }

    /** All rows; remarks from the first one on while every row still fits; rows while there is room at all. */
    private void table(List<BandStrip> judged) {
        double room = bottom - NOTES_MM - column.y();
        double remarks = judged.stream().mapToDouble(this::remarkHeight).sum();
        rowMm = Math.max(LEAST_ROW_MM, Math.min(MOST_ROW_MM, evenRowMm(judged, room - remarks)));
        double spare = room - judged.stream().mapToDouble(this::plainHeight).sum();
        int unsaid = 0;
        int placed = 0;
        for (BandStrip strip : judged) {
            double remark = remarkHeight(strip);
            boolean said = remark <= spare;
            if (column.y() + plainHeight(strip) > bottom - NOTES_MM + 1e-6) {
                break;
            }
            spare -= said ? remark : 0;
            unsaid += said || !flagged(strip) ? 0 : 1;
            row(strip, said);
            placed++;
        }
        if (placed < judged.size()) {
            add(phrases.words("proposal.sheet.more", judged.size() - placed));
        } else if (unsaid > 0) {
            add(phrases.words("proposal.sheet.remarks", unsaid));
        }
    }

    /** The height of a row with a name of one line when all rows share the room, in mm. */
    private double evenRowMm(List<BandStrip> judged, double room) {
        List<BandStrip> broken =
                judged.stream().filter(strip -> name(strip).size() > 1).toList();
        double taken = broken.stream().mapToDouble(this::nameHeight).sum();
        return (room - taken) / Math.max(1, judged.size() - broken.size());
    }

    private double plainHeight(BandStrip strip) {
        return Math.max(rowMm, nameHeight(strip));
    }

    private double nameHeight(BandStrip strip) {
        return 0.5 + Paragraphs.LEADING_EM * SIZE_MM * name(strip).size();
    }

    private List<String> name(BandStrip strip) {
        return Paragraphs.lines(strip.reading().name(), SIZE_MM, flagged(strip), NAME_MM);
    }

    private double remarkHeight(BandStrip strip) {
        List<String> lines = remark(strip);
        return lines.isEmpty() ? 0 : Paragraphs.LEADING_EM * REMARK_MM * lines.size() + REMARK_GAP_MM;
    }

    private List<String> remark(BandStrip strip) {
        String remark = strip.reading().remark();
        return remark.isEmpty() ? List.of() : Paragraphs.lines(remark, REMARK_MM, false, WIDTH_MM);
    }

    private static boolean outside(BandStrip strip) {
        return strip.reading().verdict().key().startsWith("outside");
    }

    private static boolean flagged(BandStrip strip) {
        return outside(strip) || strip.reading().verdict().key().equals("too-close");
    }

    private void row(BandStrip strip, boolean said) {
        boolean strong = flagged(strip);
        String colour = outside(strip) ? ReviewSheet.RED : ReviewSheet.INK;
        double y = column.y() + 3.4;
        List<String> name = name(strip);
        List<Mark> head = new ArrayList<>();
        for (int i = 0; i < name.size(); i++) {
            double line = y + i * Paragraphs.LEADING_EM * SIZE_MM;
            head.add(writing(0, line, Anchor.START, SIZE_MM, strong, colour, name.get(i)));
        }
        column.add(Group.of("measure", StructureRole.ROW_HEADER, head), 0);
        column.add(
                cell(
                        VALUE_RIGHT_MM,
                        y,
                        Anchor.END,
                        strong,
                        colour,
                        strip.words().value()),
                0);
        List<Mark> picture = StripMarks.of(strip, left + STRIP_LEFT_MM, column.y() + 2.1, STRIP_MM);
        column.add(new Group("strip", StructureRole.CELL_FIGURE, strip.words().description(), picture), 0);
        column.add(cell(BAND_LEFT_MM, y, Anchor.START, false, ReviewSheet.SOFT, band(strip)), 0);
        verdict(strip, said, y, strong, colour);
        column.skip(plainHeight(strip) + (said ? remarkHeight(strip) : 0));
    }

    private Group cell(double x, double y, Anchor anchor, boolean strong, String colour, String text) {
        return Group.of("cell", StructureRole.CELL, List.of(writing(x, y, anchor, SIZE_MM, strong, colour, text)));
    }

    /** The verdict, and below the whole row what would mend it. */
    private void verdict(BandStrip strip, boolean said, double y, boolean strong, String colour) {
        List<Mark> marks = new ArrayList<>();
        String verdict =
                phrases.words("drawing.verdict." + strip.reading().verdict().key());
        marks.add(writing(VERDICT_LEFT_MM, y, Anchor.START, SIZE_MM, strong, colour, verdict + " "));
        double line = column.y() + plainHeight(strip) + REMARK_MM - 0.4 + REMARK_GAP_MM / 2;
        for (String words : said ? remark(strip) : List.<String>of()) {
            marks.add(writing(0, line, Anchor.START, REMARK_MM, false, ReviewSheet.SOFT, words));
            line += Paragraphs.LEADING_EM * REMARK_MM;
        }
        column.add(Group.of("verdict", StructureRole.CELL, marks), 0);
    }

    private String band(BandStrip strip) {
        String lower = strip.words().lower();
        String upper = strip.words().upper();
        if (upper.isEmpty()) {
            return phrases.words("proposal.sheet.band.from", lower);
        }
        return lower.isEmpty()
                ? phrases.words("proposal.sheet.band.to", upper)
                : phrases.words("proposal.sheet.band.range", lower, upper);
    }

    private void note(String key, List<BandStrip> strips) {
        if (!strips.isEmpty()) {
            String names = strips.stream().map(strip -> strip.reading().name()).collect(Collectors.joining(", "));
            add(phrases.words(key, names));
        }
    }

    private void add(String text) {
        column.add(StructureRole.PARAGRAPH, text, NOTE_MM, false, ReviewSheet.SOFT);
    }
}
