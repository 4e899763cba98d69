package studio.stancebook.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Marks that belong together.
 *
 * @param name as a class in SVG
 * @param role what it is to a reader who does not see it
 * @param alternative what a figure shows, in words; empty for other roles
 * @param layer the name under which a reader of PDF can switch it off; null where it always stays
 */
public record Group(
        String name,
        StructureRole role,
        String alternative,
        List<Mark> marks,
        @Nullable String layer) {

    public Group {
        alternative = Writable.text(alternative);
        marks = List.copyOf(marks);
    }

    public Group(String name, StructureRole role, String alternative, List<Mark> marks) {
        this(name, role, alternative, marks, null);
    }

    /** This group as a layer that can be switched off. */
    public Group asLayer(String title) {
        return new Group(name, role, alternative, marks, title);
    }

    public static Group of(String name, StructureRole role, List<Mark> marks) {
        return new Group(name, role, "", marks);
    }

    /** What a group of a tagged PDF is, ISO 32000-1, 14.8.4. */
    public enum StructureRole {
        /** Not part of what the sheet says: frames, grids. */
        ARTIFACT("Artifact"),
        TITLE("H1"),
        HEADING("H2"),
        PARAGRAPH("P"),
        FIGURE("Figure"),
        /** Heads a column; the first after anything else begins a table. */
        COLUMN_HEADER("TH"),
        /** Heads a row, which it begins. */
        ROW_HEADER("TH"),
        CELL("TD"),
        /** A figure in a cell of its own. */
        CELL_FIGURE("Figure");

        private final String tag;

        StructureRole(String tag) {
            this.tag = tag;
        }

        String tag() {
            return tag;
        }

        boolean inTable() {
            return ordinal() >= COLUMN_HEADER.ordinal();
        }
    }
}
