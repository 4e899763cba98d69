package studio.stancebook.exchange.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Where things are in a workbook: its sheets by name, in order, and its shared strings.
 *
 * @param sheets names of worksheets to names of parts
 * @param sharedStrings the part with the shared strings; null if there is none
 */
record WorkbookDirectory(
        Map<String, String> sheets, @Nullable String sharedStrings) {

    private static final long MOST_BYTES = 1 << 20;

    /** @throws UnreadableTable if a part that must be there is not, or there is no worksheet */
    static WorkbookDirectory of(WorkbookParts parts) throws IOException {
        String workbook = relations(parts, "", "_rels/.rels").values().stream()
                .filter(relation -> relation.isA("officeDocument"))
                .map(Relation::target)
                .findFirst()
                .orElse("xl/workbook.xml");
        int slash = workbook.lastIndexOf('/') + 1;
        String folder = workbook.substring(0, slash);
        Map<String, Relation> relations =
                relations(parts, folder, folder + "_rels/" + workbook.substring(slash) + ".rels");
        Map<String, String> sheets = sheets(parts, workbook, relations);
        if (sheets.isEmpty()) {
            throw new UnreadableTable("The workbook has no worksheet.");
        }
        String strings = relations.values().stream()
                .filter(relation -> relation.isA("sharedStrings"))
                .map(Relation::target)
                .findFirst()
                .orElse(null);
        return new WorkbookDirectory(sheets, strings);
    }

    private record Relation(String id, String type, String target) {

        boolean isA(String kind) {
            return type.endsWith("/" + kind);
        }
    }

    private static Map<String, Relation> relations(WorkbookParts parts, String folder, String part) throws IOException {
        Map<String, Relation> relations = new LinkedHashMap<>();
        elements(parts, part, "Relationship", xml -> {
            String target = attribute(xml, "Target");
            String whole = target.startsWith("/") ? target.substring(1) : folder + target;
            relations.put(attribute(xml, "Id"), new Relation(attribute(xml, "Id"), attribute(xml, "Type"), whole));
        });
        return relations;
    }

    private static Map<String, String> sheets(WorkbookParts parts, String workbook, Map<String, Relation> relations)
            throws IOException {
        Map<String, String> sheets = new LinkedHashMap<>();
        boolean there = elements(parts, workbook, "sheet", xml -> {
            Relation relation = relations.get(relationId(xml));
            if (relation != null && relation.isA("worksheet")) {
                sheets.put(attribute(xml, "name"), relation.target());
            }
        });
        if (!there) {
            throw new NotATable("This is an office document, but no workbook (.xlsx).");
        }
        return sheets;
    }

    private static boolean elements(WorkbookParts parts, String part, String name, Consumer<XMLStreamReader> each)
            throws IOException {
        try (XmlGuard bytes = parts.open(part, MOST_BYTES)) {
            if (bytes == null) {
                return false;
            }
            XMLStreamReader xml = WorkbookXml.open(bytes);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals(name)) {
                    each.accept(xml);
                }
            }
            return true;
        } catch (XMLStreamException | RuntimeException | IOException broken) {
            throw WorkbookXml.refusal(part, broken);
        }
    }

    /** The {@code r:id}, whatever namespace (transitional or strict) the prefix stands for. */
    private static String relationId(XMLStreamReader xml) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals("id") && xml.getAttributeNamespace(i) != null) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    /** The names of the worksheets, in order. */
    List<String> names() {
        return new ArrayList<>(sheets.keySet());
    }
}
