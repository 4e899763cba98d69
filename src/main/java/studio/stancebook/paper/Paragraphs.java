package studio.stancebook.paper;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.paper.Group.StructureRole;

/** Sets text in lines of a width, one group for each paragraph. */
public final class Paragraphs {

    /** From line to line. */
    public static final double LEADING_EM = 1.4;

    private final double left;
    private final double width;
    private final double bottom;
    private final List<Group> groups = new ArrayList<>();
    private double y;

    /**
     * A column of text.
     *
     * @param topMm of the first line
     * @param bottomMm under which nothing is set
     */
    public Paragraphs(double leftMm, double topMm, double widthMm, double bottomMm) {
        this.left = leftMm;
        this.y = topMm;
        this.width = widthMm;
        this.bottom = bottomMm;
    }

    /** Where the next line's upper edge will be, mm. */
    public double y() {
        return y;
    }

    public void skip(double mm) {
        y += mm;
    }

    /** Sets a text; false, and nothing set, where it would run over the foot. */
    public boolean add(StructureRole role, String text, double sizeMm, boolean strong, String colour) {
        List<String> lines = lines(text, sizeMm, strong);
        if (y + lines.size() * LEADING_EM * sizeMm > bottom) {
            return false;
        }
        List<Mark> marks = new ArrayList<>();
        for (String line : lines) {
            marks.add(new Mark.Writing(left, y + sizeMm, Anchor.START, sizeMm, strong, colour, null, line));
            y += LEADING_EM * sizeMm;
        }
        groups.add(Group.of("words", role, marks));
        return true;
    }

    /** Adds something drawn at the place reached, and goes below it. */
    public void add(Group group, double heightMm) {
        groups.add(group);
        y += heightMm;
    }

    public List<Group> groups() {
        return List.copyOf(groups);
    }

    private List<String> lines(String text, double sizeMm, boolean strong) {
        return lines(text, sizeMm, strong, width);
    }

    /** A text in lines of that width; a word that is wider has a line of its own. */
    public static List<String> lines(String text, double sizeMm, boolean strong, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Writable.text(text).split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && LetterWidths.em(longer, strong) * sizeMm > widthMm) {
                lines.add(line + " ");
                line.setLength(0);
                longer = word;
            }
            line.replace(0, line.length(), longer);
        }
        lines.add(line.toString());
        return lines;
    }
}
