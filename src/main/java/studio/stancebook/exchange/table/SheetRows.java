package studio.stancebook.exchange.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Reads the rows of one worksheet (ECMA-376 part 1, 18.3.1) as they come; values are taken as stored, not as shown. */
final class SheetRows {

    private final XMLStreamReader xml;
    private final SharedStrings strings;
    private long row;
    private int column;
    private List<Cell> cells = List.of();
    private int characters;

    SheetRows(XMLStreamReader xml, SharedStrings strings) {
        this.xml = xml;
        this.strings = strings;
    }

    /** The next row that has cells, blank or not; null after the last. */
    @Nullable
    TableRow next() throws XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("row")) {
                return readRow();
            }
        }
        return null;
    }

    private TableRow readRow() throws XMLStreamException {
        row = rowNumber(xml.getAttributeValue(null, "r"), row + 1);
        if (row > TableLimits.MOST_ROWS + 1L) {
            throw TableLimits.tooManyRows();
        }
        cells = new ArrayList<>();
        column = -1;
        characters = 0;
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
                readCell();
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals("row")) {
                return new TableRow(row, cells, null);
            }
        }
    }

    /** @throws UnreadableTable if rows go backwards or the number is none */
    private static long rowNumber(@Nullable String attribute, long next) {
        try {
            long number = attribute == null ? next : Long.parseLong(attribute);
            if (number >= next) {
                return number;
            }
        } catch (NumberFormatException broken) {
            // told below, like a number out of order
        }
        throw new UnreadableTable("The sheet's rows are out of order at \"" + TextLimit.shown(attribute) + "\".");
    }

    private void readCell() throws XMLStreamException {
        column = CellReference.column(xml.getAttributeValue(null, "r"), column + 1);
        String type = xml.getAttributeValue(null, "t");
        StringBuilder value = new StringBuilder();
        CellText inline = new CellText();
        boolean formula = false;
        boolean inValue = false;
        while (true) {
            int event = xml.next();
            inline.accept(event, xml, row);
            if (event == XMLStreamConstants.START_ELEMENT) {
                inValue = xml.getLocalName().equals("v");
                formula |= xml.getLocalName().equals("f");
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                inValue = false;
                if (xml.getLocalName().equals("c")) {
                    place(cell(type == null ? "n" : type, value.toString(), inline.take(), formula));
                    return;
                }
            } else if (inValue && event == XMLStreamConstants.CHARACTERS) {
                CellText.append(value, xml, row);
            }
        }
    }

    private Cell cell(String type, String value, String inline, boolean formula) {
        if (formula && value.isEmpty()) {
            return new Cell("", Cell.CellKind.UNCOMPUTED);
        }
        return switch (type) {
            case "s" -> Cell.ofText(shared(value));
            case "inlineStr" -> Cell.ofText(inline);
            case "e" -> new Cell(value, Cell.CellKind.ERROR);
            case "b" -> new Cell(value.equals("1") ? "TRUE" : "FALSE", kind(formula, Cell.CellKind.TEXT));
            case "n" -> value.isBlank() ? Cell.EMPTY : new Cell(plain(value), kind(formula, Cell.CellKind.NUMBER));
            default -> value.isEmpty() ? Cell.EMPTY : new Cell(value, kind(formula, Cell.CellKind.TEXT));
        };
    }

    private static Cell.CellKind kind(boolean formula, Cell.CellKind otherwise) {
        return formula ? Cell.CellKind.FORMULA : otherwise;
    }

    private String shared(String index) {
        try {
            String text = strings.get(Integer.parseInt(index.strip()));
            if (text != null) {
                return text;
            }
        } catch (NumberFormatException broken) {
            // told below, like an index beyond the last string
        } catch (IOException gone) {
            throw new UncheckedIOException("The texts of a workbook could not be read back", gone);
        }
        throw new UnreadableTable("Row " + row + " of the sheet refers to a text that is not in the workbook.");
    }

    /** Numbers are stored as doubles, with an exponent where a program likes it. */
    private String plain(String number) {
        try {
            double value = Double.parseDouble(number.strip());
            if (Double.isFinite(value) && Math.abs(value) < 1e15) {
                String text = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
                return text.length() <= 40 ? text : number.strip();
            }
            return number.strip();
        } catch (NumberFormatException broken) {
            throw new UnreadableTable(
                    "Row " + row + " of the sheet holds a number that is none: \"" + TextLimit.shown(number) + "\".");
        }
    }

    private void place(Cell cell) {
        if (cell.text().isEmpty() && cell.kind() != Cell.CellKind.UNCOMPUTED) {
            return;
        }
        if (column >= TableLimits.MOST_COLUMNS) {
            throw TableLimits.tooManyColumns(row);
        }
        characters += cell.text().length();
        if (characters > TableLimits.MOST_CHARACTERS_IN_ROW) {
            throw TableLimits.rowTooLong(row);
        }
        while (cells.size() < column) {
            cells.add(Cell.EMPTY);
        }
        cells.add(cell);
    }
}
