package studio.stancebook.paper;

import java.io.StringWriter;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import studio.stancebook.quantity.NumberText;

/** Writes a page as an SVG file of the size of its paper, one unit a mm, that needs nothing else. */
public final class SvgWriter {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 3;

    private final XMLStreamWriter xml;

    private SvgWriter(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** The page as an XML document, the same under every locale. */
    public static String of(VectorPage page) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
            new SvgWriter(xml).document(page);
            xml.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("A string cannot be written to", impossible);
        }
        return text.toString();
    }

    private void document(VectorPage page) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        attribute("width", number(page.widthMm()) + "mm");
        attribute("height", number(page.heightMm()) + "mm");
        attribute("viewBox", "0 0 " + number(page.widthMm()) + " " + number(page.heightMm()));
        attribute("role", "img");
        attribute("aria-labelledby", "title desc");
        attribute("font-family", "Overpass, Helvetica, Arial, sans-serif");
        attribute("fill", "none");
        attribute("stroke-linejoin", "round");
        words("title", page.title());
        words("desc", page.description());
        if (page.ground() != null) {
            Path all = Path.rectangle(0, 0, page.widthMm(), page.heightMm());
            trace(new Mark.Trace(all, Ink.wash(page.ground(), 1)));
        }
        for (Group group : page.groups()) {
            group(group);
        }
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void words(String element, String text) throws XMLStreamException {
        xml.writeStartElement(element);
        attribute("id", element);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void group(Group group) throws XMLStreamException {
        xml.writeStartElement("g");
        attribute("class", group.name());
        for (Mark mark : group.marks()) {
            if (mark instanceof Mark.Trace trace) {
                trace(trace);
            } else if (mark instanceof Mark.Writing writing) {
                writing(writing);
            }
        }
        xml.writeEndElement();
    }

    private void trace(Mark.Trace trace) throws XMLStreamException {
        Ink ink = trace.ink();
        xml.writeEmptyElement("path");
        if (ink.stroke() != null) {
            attribute("stroke", ink.stroke());
            attribute("stroke-width", number(ink.widthMm()));
            if (!ink.dashesMm().isEmpty()) {
                attribute("stroke-dasharray", dashes(ink.dashesMm()));
            }
        }
        if (ink.fill() != null) {
            attribute("fill", ink.fill());
            if (ink.fillOpacity() < 1) {
                attribute("fill-opacity", number(ink.fillOpacity()));
            }
        }
        attribute("d", PathData.of(trace.path(), DECIMALS));
    }

    private static String dashes(List<Double> lengths) {
        return lengths.stream().map(SvgWriter::number).collect(Collectors.joining(" "));
    }

    private void writing(Mark.Writing writing) throws XMLStreamException {
        if (writing.ground() != null) {
            double width = LetterWidths.em(writing.text(), writing.strong()) * writing.sizeMm();
            trace(new Mark.Trace(writing.cover(width), Ink.wash(writing.ground(), 1)));
        }
        xml.writeStartElement("text");
        attribute("x", number(writing.xMm()));
        attribute("y", number(writing.yMm()));
        attribute("font-size", number(writing.sizeMm()));
        attribute("text-anchor", writing.anchor().key());
        attribute("fill", writing.colour());
        if (writing.strong()) {
            attribute("font-weight", "600");
        }
        xml.writeCharacters(writing.text());
        xml.writeEndElement();
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, value);
    }

    private static String number(double value) {
        return NumberText.plain(value, DECIMALS);
    }
}
