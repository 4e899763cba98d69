package studio.stancebook.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Readers of the XML in workbooks: no document types, no entities of its own, nothing fetched from elsewhere. */
final class WorkbookXml {

    private WorkbookXml() {}

    static XMLStreamReader open(InputStream guarded) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        return factory.createXMLStreamReader(guarded);
    }

    /** What went wrong while reading a part: a refusal where the file is at fault, and what it is where we or the disk are. */
    static RuntimeException refusal(String part, Exception failure) {
        for (Throwable cause = failure; cause != null; cause = causeOf(cause)) {
            if (isBomb(cause)) {
                return bomb(part);
            }
            if (cause instanceof RuntimeException refusalOrOurs) {
                return refusalOrOurs;
            }
        }
        return new UnreadableTable("The part " + part + " of the workbook is broken; save the workbook anew.");
    }

    private static @Nullable Throwable causeOf(Throwable failure) {
        return failure instanceof XMLStreamException broken ? broken.getNestedException() : failure.getCause();
    }

    /** The guard of the archive library speaks by its message only. */
    private static boolean isBomb(Throwable cause) {
        return cause instanceof IOException
                && String.valueOf(cause.getMessage()).contains("Zip bomb");
    }

    private static TableTooLarge bomb(String part) {
        return new TableTooLarge("The part " + part
                + " of the workbook unpacks to more than a hundred times its size (a zip bomb); it was not read.");
    }
}
