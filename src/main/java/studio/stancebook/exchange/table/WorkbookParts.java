package studio.stancebook.exchange.table;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;
import java.util.zip.ZipFile;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a workbook file (ECMA-376 part 2, a zip archive), each read through the archive library's guard against
 * zip bombs and through {@link XmlGuard}. Workbooks with macros or with links to other files are refused whole.
 */
final class WorkbookParts implements Closeable {

    private static final int MOST_PARTS = 1000;
    private static final String SAVE_VALUES = " Save a copy as .xlsx with values only and send that.";

    private final ZipSecureFile zip;
    private final ReadingTime time;

    private WorkbookParts(ZipSecureFile zip, ReadingTime time) {
        this.zip = zip;
        this.time = time;
    }

    /**
     * @throws NotATable if the archive is no workbook, or one with macros or links to other files
     * @throws UnreadableTable if it is no whole archive
     */
    static WorkbookParts open(Path file, ReadingTime time) throws IOException {
        checkDirectory(file);
        WorkbookParts parts = new WorkbookParts(new ZipSecureFile(file.toFile()), time);
        try {
            parts.requirePlainWorkbook();
            return parts;
        } catch (RuntimeException refused) {
            parts.close();
            throw refused;
        }
    }

    /** The other library reads a directory of any length into memory; this one tells its length first. */
    private static void checkDirectory(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            if (zip.size() > MOST_PARTS) {
                throw new TableTooLarge(
                        "The archive has " + zip.size() + " parts; a workbook may have " + MOST_PARTS + ".");
            }
        } catch (IOException broken) {
            throw new UnreadableTable("The workbook is broken or cut off: it is no whole zip archive.");
        }
    }

    private void requirePlainWorkbook() {
        boolean workbook = false;
        for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
            String name = entry.getName().toLowerCase(Locale.ROOT);
            if (name.endsWith("vbaproject.bin")) {
                throw new NotATable("The workbook holds macros, which are not taken in." + SAVE_VALUES);
            }
            if (name.contains("externallinks/")) {
                throw new NotATable("The workbook takes values from other files, which are not here." + SAVE_VALUES);
            }
            workbook |= name.equals("[content_types].xml");
        }
        if (!workbook) {
            throw new NotATable(
                    "This is a zip archive, but no workbook (.xlsx). An OpenDocument sheet can be saved as one.");
        }
    }

    /** The XML of a part, of at most {@code most} bytes; null if there is none. */
    @Nullable
    XmlGuard open(String part, long most) throws IOException {
        ZipArchiveEntry entry = zip.getEntry(part);
        if (entry == null) {
            return null;
        }
        InputStream bytes = zip.getInputStream(entry);
        return new XmlGuard(new BufferedInputStream(bytes, 1 << 15), part, most, time);
    }

    /** The size of a part as its archive states it; at least 1. */
    long sizeOf(String part) {
        ZipArchiveEntry entry = zip.getEntry(part);
        return entry == null ? 1 : Math.max(1, entry.getSize());
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
