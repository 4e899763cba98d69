package studio.stancebook.exchange.table;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamReader;

/**
 * Gathers the text of a shared or an inline string: all its runs, but not how it is read aloud (ECMA-376 part 1,
 * 18.4.6, {@code rPh}).
 */
final class CellText {

    private final StringBuilder text = new StringBuilder();
    private boolean inText;
    private boolean inPhonetic;

    /**
     * Takes the next event of the reader.
     *
     * @param row for the message when the text is too long; 0 for a shared string
     */
    void accept(int event, XMLStreamReader xml, long row) {
        switch (event) {
            case XMLStreamConstants.START_ELEMENT -> begin(xml.getLocalName());
            case XMLStreamConstants.END_ELEMENT -> end(xml.getLocalName());
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.SPACE -> append(xml, row);
            default -> {}
        }
    }

    private void begin(String element) {
        inText |= element.equals("t");
        inPhonetic |= element.equals("rPh");
    }

    private void end(String element) {
        inText &= !element.equals("t");
        inPhonetic &= !element.equals("rPh");
    }

    private void append(XMLStreamReader xml, long row) {
        if (inText && !inPhonetic) {
            append(text, xml, row);
        }
    }

    static void append(StringBuilder to, XMLStreamReader xml, long row) {
        if (to.length() + xml.getTextLength() > TableLimits.MOST_CHARACTERS_IN_CELL) {
            throw TableLimits.cellTooLong(row);
        }
        to.append(xml.getTextCharacters(), xml.getTextStart(), xml.getTextLength());
    }

    /** The text gathered since the last call. */
    String take() {
        String taken = text.toString();
        text.setLength(0);
        return taken;
    }
}
