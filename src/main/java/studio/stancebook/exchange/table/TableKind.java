package studio.stancebook.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The kinds of file that are read, told by their first bytes and never by their name. */
public enum TableKind {
    CSV,
    XLSX,
    JSON;

    private static final int LOOKED_AT = 512;
    private static final String ACCEPTED = " Send a CSV file, a workbook (.xlsx), or JSON as it is taken out here.";

    /**
     * The kind of a file.
     *
     * @throws NotATable if it is of another kind, which the message names where it is a common one
     * @throws UnreadableTable if it is empty
     */
    public static TableKind of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in.readNBytes(LOOKED_AT));
        }
    }

    static TableKind of(byte[] start) {
        if (start.length == 0) {
            throw new UnreadableTable("The file is empty." + ACCEPTED);
        }
        String bytes = new String(start, StandardCharsets.ISO_8859_1);
        if (bytes.startsWith("PK\u0003\u0004")) {
            return XLSX;
        }
        refuseOtherBinary(bytes);
        return ofText(bytes.replace("\u0000", "").replaceFirst("^(\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)", ""));
    }

    private static void refuseOtherBinary(String bytes) {
        for (KnownStart known : KnownStart.values()) {
            if (bytes.startsWith(known.start)) {
                throw new NotATable("This is " + known.words + ", not a table." + ACCEPTED);
            }
        }
    }

    private static TableKind ofText(String text) {
        String start = text.stripLeading().toLowerCase(Locale.ROOT);
        if (start.startsWith("<")) {
            throw new NotATable("This is markup (HTML or XML), not a table." + ACCEPTED);
        }
        if (start.startsWith("{") || start.matches("(?s)\\[\\s*[{\\]].*")) {
            return JSON;
        }
        return CSV;
    }

    /** Kinds of file that people pick by mistake. */
    private enum KnownStart {
        PNG("\u0089PNG", "a PNG picture"),
        JPEG("\u00ff\u00d8\u00ff", "a JPEG picture"),
        GIF("GIF8", "a GIF picture"),
        WEBP("RIFF", "a WebP picture or another RIFF file"),
        TIFF_LITTLE("II*\u0000", "a TIFF picture"),
        TIFF_BIG("MM\u0000*", "a TIFF picture"),
        PDF("%PDF", "a PDF document"),
        GZIP("\u001f\u008b", "a gzip archive"),
        EMPTY_ZIP("PK\u0005\u0006", "an empty zip archive"),
        OLD_OFFICE("\u00d0\u00cf\u0011\u00e0", "a workbook of the old kind (.xls) or one with a password"),
        RICH_TEXT("{\\rtf", "a rich text document");

        private final String start;
        private final String words;

        KnownStart(String start, String words) {
            this.start = start;
            this.words = words;
        }
    }
}
