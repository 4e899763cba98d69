package studio.stancebook.paper;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The tag tree of a document of one page, ISO 32000-1, 14.7: what each group is, in reading order. */
final class Tags {

    private final PDPage page;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole = new PDStructureElement("Document", root);
    private final COSArray parents = new COSArray();
    private PDStructureElement table = whole;
    private PDStructureElement row = whole;
    private Group.StructureRole last = Group.StructureRole.ARTIFACT;

    Tags(PDPage page) {
        this.page = page;
        root.appendKid(whole);
    }

    /** Adds an element for a group; its number stands in the content of the page. */
    int add(Group group) {
        int number = parents.size();
        PDStructureElement element = element(group.role().tag(), parentOf(group.role()));
        if (!group.alternative().isEmpty()) {
            element.setAlternateDescription(group.alternative());
        }
        scope(group.role(), element);
        PDMarkedContentReference content = new PDMarkedContentReference();
        content.setPage(page);
        content.setMCID(number);
        element.appendKid(content);
        parents.add(element);
        last = group.role();
        return number;
    }

    private PDStructureElement element(String tag, PDStructureElement parent) {
        PDStructureElement element = new PDStructureElement(tag, parent);
        element.setPage(page);
        parent.appendKid(element);
        return element;
    }

    /** A cell stands in a row of a table; both are begun where they have to be. */
    private PDStructureElement parentOf(Group.StructureRole role) {
        if (!role.inTable()) {
            return whole;
        }
        boolean headed = last != Group.StructureRole.COLUMN_HEADER && role == Group.StructureRole.COLUMN_HEADER;
        if (headed || !last.inTable()) {
            table = element("Table", whole);
        }
        if (headed || role == Group.StructureRole.ROW_HEADER) {
            row = element("TR", table);
        }
        return role == Group.StructureRole.CELL_FIGURE ? element("TD", row) : row;
    }

    private static void scope(Group.StructureRole role, PDStructureElement element) {
        if (role == Group.StructureRole.COLUMN_HEADER || role == Group.StructureRole.ROW_HEADER) {
            PDTableAttributeObject attributes = new PDTableAttributeObject();
            attributes.setScope(
                    role == Group.StructureRole.ROW_HEADER
                            ? PDTableAttributeObject.SCOPE_ROW
                            : PDTableAttributeObject.SCOPE_COLUMN);
            element.addAttribute(attributes);
        }
    }

    void writeTo(PDDocument document) {
        COSDictionary tree = new COSDictionary();
        COSArray numbers = new COSArray();
        numbers.add(COSInteger.ZERO);
        numbers.add(parents);
        tree.setItem(COSName.NUMS, numbers);
        root.setParentTree(new PDNumberTreeNode(tree, PDParentTreeValue.class));
        root.setParentTreeNextKey(1);
        page.setStructParents(0);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setStructureTreeRoot(root);
        catalog.setLanguage("en");
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        catalog.setMarkInfo(marked);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
    }
}
