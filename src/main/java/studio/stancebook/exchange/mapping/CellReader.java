package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import studio.stancebook.exchange.table.Cell;
import studio.stancebook.exchange.table.TableRow;
import studio.stancebook.problem.CellGuard;

/** Reads the cells of one row: text, numbers in the unit of their column, and what of it came from formulas. */
final class CellReader {

    /** How people write that there is no value. */
    private static final Set<String> NOTHING = Set.of("", "-", "–", "—", "na", "n/a", "#n/a");

    private final TableRow row;
    private final Problems problems;
    private final List<String> formulas = new ArrayList<>();

    CellReader(TableRow row, Problems problems) {
        this.row = row;
        this.problems = problems;
    }

    /** The text of a column, its guard against formulas taken off; empty where there is none to be had. */
    String text(ColumnUse use) {
        return usable(use) ? CellGuard.unguarded(row.cell(use.index()).stripped()) : "";
    }

    /** As {@link #text}, but empty too for a dash and the like, which say that there is no value. */
    String value(ColumnUse use) {
        String text = usable(use) ? row.cell(use.index()).stripped() : "";
        return NOTHING.contains(text.toLowerCase(Locale.ROOT)) ? "" : CellGuard.unguarded(text);
    }

    /** The number of a column as it is kept; empty, and a problem unless the cell is blank, where there is none. */
    OptionalDouble number(ColumnUse use) {
        String text = value(use);
        return text.isEmpty() ? OptionalDouble.empty() : number(use, text, problems::unreadable);
    }

    /** The number of a column that every row needs; an error where there is none. */
    OptionalDouble requiredNumber(ColumnUse use) {
        String text = value(use);
        if (text.isEmpty()) {
            problems.error(use.heading(), "", "The row has no " + use.target().name() + ".");
            return OptionalDouble.empty();
        }
        return number(use, text, problems::error);
    }

    private OptionalDouble number(ColumnUse use, String text, Complaint complaint) {
        Cell.CellKind kind = row.cell(use.index()).kind();
        CellNumber reading = CellNumber.of(text, kind == Cell.CellKind.NUMBER);
        if (reading.number() == null) {
            complaint.about(use.heading(), text, reading.fault() + accepted(use));
            return OptionalDouble.empty();
        }
        ColumnUnit unit = reading.unit() == null ? use.unit() : reading.unit();
        if (unit.kept() != use.unit().kept()) {
            complaint.about(use.heading(), text, "It is in another kind of unit." + accepted(use));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(unit.toKept(reading.number()));
    }

    private interface Complaint {
        void about(String column, String value, String message);
    }

    /** The cells of some columns as they are written, for messages. */
    String texts(List<ColumnUse> uses) {
        return String.join(
                ", ", uses.stream().map(use -> row.cell(use.index()).stripped()).toList());
    }

    private static String accepted(ColumnUse use) {
        String unit = use.unit().key();
        return " Accepted: a number" + (unit.isEmpty() ? "" : " in " + unit) + ", such as 12.5 or 12,5.";
    }

    private boolean usable(ColumnUse use) {
        Cell cell = row.cell(use.index());
        switch (cell.kind()) {
            case UNCOMPUTED -> {
                problems.unreadable(
                        use.heading(),
                        "",
                        "It is a formula whose result is not stored in the workbook;"
                                + " open it in a spreadsheet program and save it.");
                return false;
            }
            case ERROR -> {
                boolean missing = NOTHING.contains(cell.stripped().toLowerCase(Locale.ROOT));
                if (!missing) {
                    problems.unreadable(use.heading(), cell.text(), "The spreadsheet could not compute it.");
                }
                return false;
            }
            case FORMULA -> {
                if (!formulas.contains(use.heading())) {
                    formulas.add(use.heading());
                }
                return true;
            }
            default -> {
                return true;
            }
        }
    }

    /** Raises one query for all values of the row that are stored results of formulas. */
    void queryFormulas() {
        if (!formulas.isEmpty()) {
            problems.query(
                    String.join(", ", formulas),
                    "",
                    "The value is the stored result of a formula in the workbook; check that it was up to date.");
        }
    }
}
