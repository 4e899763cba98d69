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
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The tag tree of a document of one page, ISO 32000-1, 14.7: what each group is, in reading order. */
final class Tags {

    private final PDPage page;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole = new PDStructureElement("Document", root);
    private final COSArray parents = new COSArray();

    Tags(PDPage page) {
        this.page = page;
        root.appendKid(whole);
    }

    /** Adds an element for a group; its number stands in the content of the page. */
    int add(Group group) {
        int number = parents.size();
        PDStructureElement element = new PDStructureElement(group.role().tag(), whole);
        element.setPage(page);
        if (!group.alternative().isEmpty()) {
            element.setAlternateDescription(group.alternative());
        }
        PDMarkedContentReference content = new PDMarkedContentReference();
        content.setPage(page);
        content.setMCID(number);
        element.appendKid(content);
        whole.appendKid(element);
        parents.add(element);
        return number;
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
