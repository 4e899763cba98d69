package studio.stancebook.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** What a document says of itself as XMP (ISO 16684-1): its title, and that it keeps to ISO 14289-1 (PDF/UA-1). */
final class Metadata {

    private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static final String DUBLIN_CORE = "http://purl.org/dc/elements/1.1/";
    private static final String UNIVERSAL_ACCESS = "http://www.aiim.org/pdfua/ns/id/";

    private final XMLStreamWriter xml;

    private Metadata(XMLStreamWriter xml) {
        this.xml = xml;
    }

    static PDMetadata of(VectorPage page, PDDocument document) throws IOException {
        byte[] packet = packet(page).getBytes(StandardCharsets.UTF_8);
        return new PDMetadata(document, new ByteArrayInputStream(packet));
    }

    private static String packet(VectorPage page) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
            new Metadata(xml).write(page);
            xml.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("A string cannot be written to", impossible);
        }
        return text.toString();
    }

    private void write(VectorPage page) throws XMLStreamException {
        xml.writeProcessingInstruction("xpacket", "begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"");
        xml.writeStartElement("x", "xmpmeta", "adobe:ns:meta/");
        xml.writeNamespace("x", "adobe:ns:meta/");
        xml.writeStartElement("rdf", "RDF", RDF);
        xml.writeNamespace("rdf", RDF);
        xml.writeStartElement("rdf", "Description", RDF);
        xml.writeNamespace("dc", DUBLIN_CORE);
        xml.writeNamespace("pdfuaid", UNIVERSAL_ACCESS);
        xml.writeAttribute("rdf", RDF, "about", "");
        words("title", page.title());
        words("description", page.description());
        xml.writeStartElement("pdfuaid", "part", UNIVERSAL_ACCESS);
        xml.writeCharacters("1");
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeProcessingInstruction("xpacket", "end=\"r\"");
    }

    private void words(String property, String text) throws XMLStreamException {
        xml.writeStartElement("dc", property, DUBLIN_CORE);
        xml.writeStartElement("rdf", "Alt", RDF);
        xml.writeStartElement("rdf", "li", RDF);
        xml.writeAttribute("xml:lang", "x-default");
        xml.writeCharacters(text);
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
    }
}
